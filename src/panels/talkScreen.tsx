import { useState } from 'preact/hooks';
import { postX, ridgeCarries, roofOf } from '../core/level/layout';
import { modesOf, type Level } from '../core/level/level';
import { before, beyond, wholeJob, within, type Stage } from '../core/level/stages';
import { tasksOn } from '../core/order/crew/planner';
import { stageOf } from '../core/order/crew/task';
import { topicsOn } from '../core/level/topics';
import type { Mode } from '../core/level/mode';
import { stayingPosts } from '../core/site/planPosts';
import type { Messages } from '../present/words/messages';
import { memberName } from '../present/words/names';
import { pick } from '../present/words/spotNames';
import { BeginAssigned } from './classes/beginAssigned';
import { goingOn } from './classes/takenActs';
import { startRun, wordsOf, type Desk } from './desk';
import { Measure } from './measure';
import { Radios } from './radios';
import { RecallCard } from './recallCard';
import { LanguageButton } from './topBar';
import { useSignal } from './useSignal';

/** Of the job that was chosen. */
export const TalkPage = ({ desk }: { readonly desk: Desk }) => {
  const level = useSignal(desk.level);
  return level ? <TalkScreen desk={desk} level={level} /> : null;
};

/** The talk at the tailgate: the plan in numbers, how it may be built, and what can hurt, before anybody starts. */
export const TalkScreen = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  const { lang } = useSignal(desk.settings);
  const assigned = goingOn(desk, level);
  return (
    <div class="page">
      <header>
        <button
          type="button"
          class="btn small"
          onClick={() => (desk.screen.value = assigned ? 'assigned' : 'start')}
        >
          ‹ {assigned ? words.classDoor.back : words.ui.talk.back}
        </button>
        <span class="grow" />
        <LanguageButton desk={desk} />
      </header>
      <main>
        <h1>
          {words.ui.talk.title}: {level.title[lang]}
        </h1>
        {level.briefing.map((line) => (
          <p class="lead" style="margin-bottom:6px" key={line.en}>
            {line[lang]}
          </p>
        ))}
        <RecallCard desk={desk} level={level} key={level.id} />
        <div class="talk" style="margin-top:14px">
          <section class="paper">
            {level.stages && (
              <>
                <PartOfJob words={words} level={level} />
                <hr style="margin:18px 0" />
              </>
            )}
            <Cautions words={words} level={level} />
            <hr style="margin:18px 0" />
            <Ways desk={desk} level={level} />
          </section>
          <section class="paper">
            {assigned ? (
              <BeginAssigned desk={desk} level={level} mode={assigned.assignment.mode} />
            ) : (
              <Beginning desk={desk} level={level} />
            )}
            <hr style="margin:18px 0" />
            <PlanFigures desk={desk} level={level} />
          </section>
        </div>
      </main>
    </div>
  );
};

/** Whose work is what, where a level is part of a job. */
const PartOfJob = ({ words, level }: { readonly words: Messages; readonly level: Level }) => {
  const range = level.stages ?? wholeJob;
  const rows: readonly (readonly [string, (stage: Stage) => boolean])[] = [
    [words.ui.talk.found, (stage) => before(range, stage)],
    [words.ui.talk.yours, (stage) => within(range, stage)],
    [words.ui.talk.after, (stage) => beyond(range, stage)],
  ];
  return (
    <dl class="parts">
      {rows.map(([name, holds]) => {
        const tasks = tasksOn(level).filter((code) => holds(stageOf[code]));
        return tasks.length === 0 ? null : (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{tasks.map((code) => words.tasks[code]).join(' · ')}</dd>
          </div>
        );
      })}
    </dl>
  );
};

const Cautions = ({ words, level }: { readonly words: Messages; readonly level: Level }) => (
  <>
    <h2>{words.ui.talk.cautions}</h2>
    <p class="first">{words.ui.talk.first}</p>
    <ul class="cautions" style="margin-top:6px">
      {level.cautions
        .filter((id) => id !== 'localCode')
        .map((id) => (
          <li key={id}>{pick(words.cautions, id)}</li>
        ))}
    </ul>
  </>
);

const Beginning = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  const modes = modesOf(level);
  const [mode, setMode] = useState<Mode>(modes.find((one) => one === 'list') ?? modes[0] ?? 'own');
  return (
    <>
      <h2>{words.ui.talk.mode}</h2>
      <Radios
        label={words.ui.talk.mode}
        options={modes.map((one) => ({ value: one, text: pick(words.ui.mode, one) }))}
        value={mode}
        set={(one) => setMode(one as Mode)}
      />
      <p class="dim" style="margin:8px 0 0">
        {pick(words.ui.modeSays, mode)}
        {mode === 'own' && level.stages ? ` ${words.ui.talk.show}` : ''}
      </p>
      <div class="go">
        <button type="button" class="btn main" id="begin" onClick={() => void startRun(desk, level, mode)}>
          {words.ui.talk.begin}
        </button>
      </div>
    </>
  );
};

/** In the order the work needs them. */
const PlanFigures = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const { commonRafters, ridges, blocks, ties, posts } = roofOf(level);
  const cuts = commonRafters[0];
  const names = words.ui.talk.figures;
  const block = [...blocks].sort((a, b) => b.count - a.count)[0];
  const rows: readonly (readonly [string, number | undefined])[] = [
    [names.run, cuts?.run],
    [names.ridgeTop, ridges[0]?.topHeight],
    [names.plumbCut, cuts?.plumbCutLength],
    [names.body, cuts?.bodyLength],
    [names.seat, cuts?.seat],
    [names.tail, cuts?.tailLength],
    [names.block, block?.length],
    [names.collar, ties.find(({ kind }) => kind === 'collar')?.height],
    ...stayingPosts(level).map(
      (id, i) => [words.beam.fromA(memberName(words, id)), postX(level, i + 1)] as const,
    ),
    [words.beam.length, stayingPosts(level).length > 0 ? posts?.[0]?.length : undefined],
  ];
  return (
    <>
      <h2>{words.ui.talk.plan}</h2>
      <dl class="figures">
        {rows.map(([name, inches]) =>
          inches === undefined ? null : (
            <>
              <dt key={name}>{name}</dt>
              <dd key={`${name}=`}>
                <Measure inches={inches} units={units} words={words} />
              </dd>
            </>
          ),
        )}
      </dl>
    </>
  );
};

const Ways = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  return (
    <>
      <h2>{words.ui.talk.agreed}</h2>
      <dl>
        {ridgeCarries(level) && <Beam desk={desk} level={level} />}
        {topicsOn(level).map((topic) => (
          <div key={topic} style="padding:4px 0">
            <dt style="display:inline;font-weight:600">{pick(words.trade.method, topic, 'name')}: </dt>
            <dd style="display:inline">
              {level.methods[topic].map((value) => pick(words.trade.method, topic, value)).join(' · ')}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
};

/** A ridge on posts that stay, and why there may be no ties. */
const Beam = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const { beam, trade } = wordsOf(desk);
  const rows: readonly (readonly [string, string])[] = [
    [trade.member.ridge, beam.ridge(stayingPosts(level).length)],
    ...(level.plan.joists ? [] : [[trade.method.ties.name, beam.noTies] as const]),
  ];
  return (
    <>
      {rows.map(([name, says]) => (
        <div key={name} style="padding:4px 0">
          <dt style="display:inline;font-weight:600">{name}: </dt>
          <dd style="display:inline">{says}</dd>
        </div>
      ))}
    </>
  );
};
