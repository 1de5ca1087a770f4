import { useEffect } from 'preact/hooks';
import type { TakenOn } from '../../content/classSchema';
import type { Level } from '../../core/level/level';
import { passLine } from '../../core/score/scored';
import { pick } from '../../present/words/spotNames';
import type { RunHead } from '../../session/store';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { useSignal } from '../useSignal';
import { ClassHeader } from './classHeader';
import { CodeField } from './codeField';
import { dayText, isPast, pointsText } from './figures';
import { HandIn } from './handIn';
import { refusedLine } from './refusedLine';
import { runsFor, talkAssigned } from './takenActs';

/** An assignment as a learner has it: what is asked, under which code, the jobs, and how to hand in. */
export const AssignedScreen = ({ desk }: { readonly desk: Desk }) => {
  const { classes: words } = classWordsOf(desk);
  const id = useSignal(desk.classes.open);
  const taken = useSignal(desk.classes.taken).find(({ assignment }) => assignment.id === id);
  const refused = useSignal(desk.classes.refused);
  useSignal(desk.settings);
  useEffect(() => {
    void desk.store.runs().then(
      (heads) => (desk.heads.value = heads),
      () => undefined,
    );
  }, []);
  const label = taken?.assignment.label;
  return (
    <div class="page classPage">
      <ClassHeader desk={desk} />
      <main>
        <h1>{label === undefined || label === '' ? words.learnerTitle : words.named(label)}</h1>
        {refused !== undefined && (
          <section class="paper sheetOf" role="alert" id="refused">
            <p>{words.refused}</p>
            <p class="dim">{refusedLine(classWordsOf(desk), refused)}</p>
          </section>
        )}
        {taken && <Taken desk={desk} taken={taken} key={taken.assignment.id} />}
      </main>
    </div>
  );
};

type TakenProps = { readonly desk: Desk; readonly taken: TakenOn };

const Taken = ({ desk, taken }: TakenProps) => (
  <div class="sheets">
    <section class="paper sheetOf">
      <Asked desk={desk} taken={taken} />
      <hr />
      <CodeField desk={desk} taken={taken} />
    </section>
    <section class="paper sheetOf">
      <Jobs desk={desk} taken={taken} />
      {taken.learner !== undefined && (
        <>
          <hr />
          <HandIn desk={desk} taken={taken} />
        </>
      )}
    </section>
  </div>
);

const Asked = ({ desk, taken: { assignment } }: TakenProps) => {
  const words = classWordsOf(desk);
  const { asked } = words.classes;
  const { due, mode, seeds } = assignment;
  const missing = assignment.levels.filter((id) => !desk.levels.some((level) => level.id === id)).length;
  const rows: readonly (readonly [string, string])[] = [
    [asked.mode, `${pick(words.ui.mode, mode)}. ${pick(words.ui.modeSays, mode)}`],
    ...(due === undefined ? [] : [[asked.due, dayText(words.lang, due)] as const]),
    [asked.line, asked.points(pointsText(assignment.passLine ?? passLine.total))],
    [asked.site, seeds === 'same' ? asked.same : asked.each],
  ];
  return (
    <>
      <h2>{asked.title}</h2>
      <dl class="terms askedOf">
        {rows.map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {due !== undefined && isPast(due) && <p class="caution">{asked.past}</p>}
      {missing > 0 && <p class="caution">{asked.missing(missing)}</p>}
    </>
  );
};

const Jobs = ({ desk, taken }: TakenProps) => {
  const { jobs } = classWordsOf(desk).classes;
  const heads = runsFor(useSignal(desk.heads), taken);
  const levels = taken.assignment.levels.flatMap((id) => desk.levels.find((level) => level.id === id) ?? []);
  return (
    <>
      <h2>{jobs.title}</h2>
      <ul class="lines">
        {levels.map((level) => (
          <Job
            desk={desk}
            taken={taken}
            level={level}
            heads={heads.filter((head) => head.level === level.id)}
            key={level.id}
          />
        ))}
      </ul>
    </>
  );
};

type JobProps = TakenProps & { readonly level: Level; readonly heads: readonly RunHead[] };

const Job = ({ desk, taken, level, heads }: JobProps) => {
  const words = classWordsOf(desk);
  const { jobs } = words.classes;
  const ended = heads.filter(({ state }) => state === 'done');
  const last = ended.at(-1)?.total;
  const says =
    last !== undefined
      ? jobs.last(pointsText(Math.round(last)), ended.length)
      : heads.length > 0
        ? jobs.open
        : jobs.none;
  return (
    <li>
      <span>
        <b>{level.title[words.lang]}</b>
        <span class="dim">{says}</span>
      </span>
      <button
        type="button"
        class="btn"
        data-assigned={level.id}
        disabled={taken.learner === undefined}
        onClick={() => talkAssigned(desk, taken, level)}
      >
        {ended.length > 0 ? jobs.again : jobs.start}
      </button>
    </li>
  );
};
