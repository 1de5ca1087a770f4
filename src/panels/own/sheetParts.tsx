import { useMemo } from 'preact/hooks';
import { cutDrawing } from '../../present/roofs/drawCuts';
import { cutMembers, type DrawnMember } from '../../present/roofs/cutMembers';
import type { Figure } from '../../present/roofs/figures';
import { roofSheet } from '../../present/roofs/sheet';
import type { SheetAsked, SheetPart, SheetRow } from '../../present/roofs/sheetShape';
import { FiguredText } from '../figuredText';
import { Drawn } from './drawn';

/** The figured roof as people read it, part by part in the order of the work, each member with the drawing of its cuts. */
export const SheetParts = ({ asked }: { readonly asked: SheetAsked }) => {
  const { plan, roof, words, units } = asked;
  const { sheet, members } = useMemo(
    () => ({ sheet: roofSheet(asked), members: cutMembers(asked) }),
    [plan, roof, words, units],
  );
  return (
    <section class="paper figured" aria-labelledby="figured">
      <h2 id="figured">{words.own.numbers}</h2>
      <p class="facts">
        <b>{sheet.title}.</b> <FiguredText text={sheet.facts.join(' ')} />
      </p>
      {sheet.parts.map((part) => (
        <Part asked={asked} part={part} members={members} key={part.key} />
      ))}
    </section>
  );
};

type PartProps = {
  readonly asked: SheetAsked;
  readonly part: SheetPart;
  readonly members: readonly DrawnMember[];
};

const Part = ({ asked, part, members }: PartProps) => (
  <details class="sheetPart" open={opensWide()}>
    <summary>
      <h3>{part.title}</h3>
    </summary>
    <div class="sticks">
      {part.rows.map((row) => (
        <Row asked={asked} row={row} member={members.find(({ id }) => id === row.id)} key={row.id} />
      ))}
      {part.notes.map((note) => (
        <p class="note" key={note}>
          <FiguredText text={note} />
        </p>
      ))}
    </div>
  </details>
);

/** A phone shows the parts' names, and each when it is asked for; paper shows them all. */
const opensWide = (): boolean => matchMedia('(min-width: 900px), print').matches;

type RowProps = {
  readonly asked: SheetAsked;
  readonly row: SheetRow;
  readonly member: DrawnMember | undefined;
};

/** What has one figure and no drawing, such as a line of the list for the yard, is a line here too. */
const isLine = ({ figures }: SheetRow, member: DrawnMember | undefined): boolean =>
  member === undefined && figures.length === 1 && figures[0]?.list === undefined;

const Row = ({ asked, row, member }: RowProps) => (
  <div class={isLine(row, member) ? 'stick oneLine' : 'stick'}>
    <h4>
      {row.name}
      {row.count !== undefined && <span class="many"> × {row.count}</span>}
    </h4>
    {row.figures.length > 0 && (
      <dl>
        {row.figures.map((figure) => (
          <Told figure={figure} key={figure.key} />
        ))}
      </dl>
    )}
    {row.notes.map((note) => (
      <p class="note" key={note}>
        <FiguredText text={note} />
      </p>
    ))}
    {member && <Drawn drawing={cutDrawing(asked, member, drawnSize)} />}
  </div>
);

const drawnSize = { width: 640, figure: 17, word: 14, deep: 54 };

const Told = ({ figure: { name, text, feet } }: { readonly figure: Figure }) => (
  <div class={text.length > 26 ? 'long' : undefined}>
    <dt>{name}</dt>
    <dd>
      <FiguredText text={text} />
      {feet !== undefined && (
        <span class="dim">
          {' '}
          <FiguredText text={feet} />
        </span>
      )}
    </dd>
  </div>
);
