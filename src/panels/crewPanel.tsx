import { useEffect, useRef } from 'preact/hooks';
import { ownList } from '../core/order/crew/crewList';
import { againstWall } from '../core/level/layout';
import type { Level } from '../core/level/level';
import type { Attempt } from '../core/site/attempt';
import { pick } from '../present/words/spotNames';
import { heldName, taskName } from '../present/words/names';
import { lineAndHair } from '../present/words/numbers';
import { checkRules } from '../core/order/rules';
import { wordsOf, type Desk } from './desk';
import { LeadSays } from './leadSays';
import { Measure } from './measure';
import { RowMark } from './toolIcons';
import { useSignal } from './useSignal';

/** Readings said, newest first, this many. */
const readingsShown = 8;

/** The sheet of the crew: what comes next where the mode shows it, the goal where it does not, and what was read. */
export const CrewPanel = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const host = useRef<HTMLElement>(null);
  useEffect(() => showNow(host.current), [attempt.steps.length]);
  return (
    <section class="crew paper" ref={host} tabIndex={0} aria-label={words.ui.site.summary}>
      <LeadSays desk={desk} attempt={attempt} />
      {attempt.mode === 'list' || attempt.mode === 'watch' ? (
        <CrewRows desk={desk} attempt={attempt} />
      ) : (
        <Goal desk={desk} level={attempt.level} nudge={attempt.mode === 'nudge'} />
      )}
      <hr />
      <h3>{words.ui.site.readings}</h3>
      <Readings desk={desk} attempt={attempt} />
    </section>
  );
};

/** The first row under way comes into sight, where the sheet scrolls by itself. */
const showNow = (sheet: HTMLElement | null): void => {
  const row = sheet?.querySelector<HTMLElement>('.now');
  if (!sheet || !row || sheet.scrollHeight <= sheet.clientHeight) return;
  sheet.scrollTop = Math.max(0, row.offsetTop - sheet.offsetTop - sheet.clientHeight / 3);
};

const CrewRows = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const words = wordsOf(desk);
  const rows = ownList(attempt);
  const firstLater = rows.findIndex(({ state, closes }) => state === 'later' && closes.length > 0);
  return (
    <>
      <h2>{words.ui.site.list}</h2>
      <ul class="rows">
        {rows.map((row, i) => (
          <>
            {i === firstLater && (
              <li class="closes" key="closes">
                {words.ui.site.noWayBack}
              </li>
            )}
            <li class={row.state} key={`${row.code}${row.side ?? ''}`}>
              <RowMark state={row.state} />
              <span>
                {taskName(words, row)}
                <span class="hidden">: {words.spoken.row[row.state]}</span>
              </span>
              <span class="tn dim">{row.state === 'now' ? row.left : ''}</span>
            </li>
          </>
        ))}
      </ul>
    </>
  );
};

const Goal = ({
  desk,
  level,
  nudge,
}: {
  readonly desk: Desk;
  readonly level: Level;
  readonly nudge: boolean;
}) => {
  const words = wordsOf(desk);
  return (
    <>
      <h2>{words.ui.site.goal}</h2>
      <p>{words.ui.site.goalSays}</p>
      {nudge && (
        <>
          <hr />
          <h3>{words.ui.site.checks}</h3>
          <ul class="rows">
            {checkRules
              .filter(({ id, shows }) => shows === 'now' && !(id === 'C4' && againstWall(level)))
              .map(({ id }) => (
                <li key={id}>
                  <RowMark state="later" />
                  <span>{words.rules[id]?.name}</span>
                </li>
              ))}
          </ul>
        </>
      )}
    </>
  );
};

const Readings = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const last = attempt.site.readings.slice(-readingsShown).reverse();
  if (last.length === 0) return <p class="dim">{words.ui.site.noReadings}</p>;
  return (
    <dl class="read">
      {last.map((reading) => (
        <>
          <dt key={`t${reading.told}`}>{heldName(words, reading)}</dt>
          <dd key={`d${reading.told}`} class={typeof reading.said === 'number' ? undefined : 'saidWords'}>
            {typeof reading.said === 'number' && reading.at !== 'punch' ? (
              <Said inches={reading.said} desk={desk} />
            ) : (
              pick(words.trade.seen, String(reading.said))
            )}
          </dd>
        </>
      ))}
    </dl>
  );
};

/** A reading as it was said: the line of the rule, and the hair to one side of it. */
const Said = ({ inches, desk }: { readonly inches: number; readonly desk: Desk }) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const { line, side } = lineAndHair(inches);
  if (units !== 'feet' || side === 'on') return <Measure inches={inches} units={units} words={words} />;
  return (
    <>
      <Measure inches={line} units={units} words={words} />
      <small>{words.ui.act.hairSaid[side]}</small>
    </>
  );
};
