import { useState } from 'preact/hooks';
import { longestLabel, type Assignment, type SeedPolicy } from '../../content/assignment';
import type { Mode } from '../../core/level/mode';
import { pick } from '../../present/words/spotNames';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { Radios } from '../radios';
import { assignmentOf, freshDraft, giveOut, lineTyped, modesFor, type Draft } from './outActs';

type Props = { readonly desk: Desk; readonly made: (assignment: Assignment) => void };

/** What is asked of a class: jobs, how, on which sites, until when, and what is enough. */
export const OutForm = ({ desk, made }: Props) => {
  const { out } = classWordsOf(desk).classes;
  const [draft, setDraft] = useState(freshDraft);
  const put = (part: Partial<Draft>): void => setDraft(settled(desk, { ...draft, ...part }));
  const make = (event: Event): void => {
    event.preventDefault();
    const assignment = assignmentOf(draft);
    if (!assignment || modesFor(pickedOf(desk, draft)).length === 0) return;
    void giveOut(desk, assignment).then(() => made(assignment));
  };
  const bad = lineTyped(draft.passLine) === undefined;
  return (
    <form onSubmit={make} class="outForm">
      <PickJobs desk={desk} draft={draft} put={put} />
      <PickMode desk={desk} draft={draft} put={put} />
      <div class="field">
        <span class="label">{out.seeds}</span>
        <Radios
          label={out.seeds}
          options={(['each', 'same'] as const).map((one) => ({ value: one, text: out[one] }))}
          value={draft.seeds}
          set={(seeds) => put({ seeds: seeds as SeedPolicy })}
        />
      </div>
      <div class="pair">
        <Typed id="due" label={out.due} day value={draft.due} put={(due) => put({ due })} />
        <Typed
          id="passLine"
          label={out.line}
          value={draft.passLine}
          bad={bad ? out.lineBad : ''}
          put={(passLine) => put({ passLine })}
        />
      </div>
      <Typed
        id="label"
        label={out.label}
        says={out.labelSays}
        value={draft.label}
        put={(label) => put({ label })}
      />
      <button type="submit" class="btn main" id="makeLink" disabled={draft.levels.length === 0 || bad}>
        {out.make}
      </button>
    </form>
  );
};

const pickedOf = (desk: Desk, { levels }: Draft) => desk.levels.filter(({ id }) => levels.includes(id));

/** A way of playing that the jobs do not share gives place to the first that they do. */
const settled = (desk: Desk, draft: Draft): Draft => {
  const shared = modesFor(pickedOf(desk, draft));
  const [first] = shared;
  return shared.includes(draft.mode) || first === undefined ? draft : { ...draft, mode: first };
};

type PartProps = {
  readonly desk: Desk;
  readonly draft: Draft;
  readonly put: (part: Partial<Draft>) => void;
};

const PickJobs = ({ desk, draft, put }: PartProps) => {
  const words = classWordsOf(desk);
  const toggle = (id: string): void => {
    const on = draft.levels.includes(id) ? draft.levels.filter((one) => one !== id) : [...draft.levels, id];
    put({ levels: desk.levels.map((level) => level.id).filter((one) => on.includes(one)) });
  };
  return (
    <fieldset class="field">
      <legend class="label">{words.classes.out.jobs}</legend>
      <div class="ticks">
        {desk.levels.map(({ id, title }) => (
          <label key={id}>
            <input
              type="checkbox"
              data-job={id}
              checked={draft.levels.includes(id)}
              onChange={() => toggle(id)}
            />
            {title[words.lang]}
          </label>
        ))}
      </div>
      {draft.levels.length === 0 && <p class="dim">{words.classes.out.pickJobs}</p>}
    </fieldset>
  );
};

const PickMode = ({ desk, draft, put }: PartProps) => {
  const words = classWordsOf(desk);
  const { out } = words.classes;
  const shared = modesFor(pickedOf(desk, draft));
  return (
    <div class="field">
      <span class="label">{out.mode}</span>
      {shared.length === 0 ? (
        <p class="caution">{out.noMode}</p>
      ) : (
        <>
          <Radios
            label={out.mode}
            options={shared.map((one) => ({ value: one, text: pick(words.ui.mode, one) }))}
            value={draft.mode}
            set={(mode) => put({ mode: mode as Mode })}
          />
          <p class="dim">{pick(words.ui.modeSays, draft.mode)}</p>
        </>
      )}
    </div>
  );
};

type TypedProps = {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly put: (value: string) => void;
  readonly day?: boolean;
  readonly says?: string;
  readonly bad?: string;
};

const Typed = ({ id, label, value, put, day = false, says, bad }: TypedProps) => (
  <label class="field">
    <span class="label">{label}</span>
    <input
      id={id}
      {...(day ? ({ type: 'date' } as const) : ({ type: 'text' } as const))}
      maxLength={longestLabel}
      value={value}
      autocomplete="off"
      aria-invalid={bad !== undefined && bad !== ''}
      aria-describedby={`${id}-says`}
      onInput={(event) => put(event.currentTarget.value)}
    />
    <span class={bad ? 'bad' : 'dim'} role={bad === undefined ? undefined : 'status'} id={`${id}-says`}>
      {bad || says || ''}
    </span>
  </label>
);
