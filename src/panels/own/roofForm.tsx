import type { Complaint } from '../../content/complaint';
import { cautionFields } from '../../content/draft/cautionFields';
import { groups, styles, type Field, type Style } from '../../content/draft/fields';
import { askedOf, fieldAt } from '../../content/draft/roofDraft';
import { refusalSaid, roofSaid } from '../../present/roofs/said';
import type { RoofMessages } from '../../present/words/roofMessages';
import type { Desk } from '../desk';
import { roofWordsOf } from './roofWords';
import { Radios } from '../radios';
import { FieldRow, idOf, labelOf, type Beside } from './fieldRow';
import { setStyle, setTyped, setUnits, type OwnRoof } from './ownRoof';

/** The questions, group by group; an answer that cannot be says so where it stands. */
export const RoofForm = ({ desk, own }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const words = roofWordsOf(desk);
  const { draft } = own;
  const asked = askedOf(draft);
  return (
    <form class="ownForm paper" onSubmit={(event) => event.preventDefault()} aria-label={words.own.title}>
      <div class="ask1 wide">
        <label for="own-style">{words.own.style}</label>
        <select
          id="own-style"
          value={draft.style}
          onChange={(event) => setStyle(desk, event.currentTarget.value as Style)}
        >
          {styles.map((style) => (
            <option value={style} key={style}>
              {words.own.styles[style]}
            </option>
          ))}
        </select>
      </div>
      <div class="unitsOf">
        <span>{words.own.units}</span>
        <Radios
          small
          label={words.own.units}
          options={[
            { value: 'in', text: words.own.inches },
            { value: 'mm', text: words.own.millimetres },
          ]}
          value={draft.units}
          set={(units) => setUnits(desk, units === 'mm' ? 'mm' : 'in')}
        />
        <p class="dim">{words.own.howToType}</p>
      </div>
      {groups.map((group) => {
        const inGroup = asked.filter((field) => field.group === group);
        return inGroup.length === 0 ? null : (
          <fieldset key={group}>
            <legend>{words.own.groups[group]}</legend>
            {inGroup.map((field) => (
              <FieldRow
                field={field}
                draft={draft}
                words={words}
                beside={besideOf(own, field, words)}
                set={(typed) => setTyped(desk, typed)}
                key={field.id}
              />
            ))}
          </fieldset>
        );
      })}
    </form>
  );
};

const besideOf = ({ draft, read, heeds }: OwnRoof, field: Field, words: RoofMessages): Beside => ({
  refused: read.ok
    ? []
    : read.complaints
        .filter(({ path }) => fieldAt(draft, path)?.id === field.id)
        .map((one) => refusalText(words, one)),
  heeds: heeds
    .filter(({ code }) => cautionFields[code] === field.id)
    .map(({ text, source }) => {
      const said = roofSaid(words.lang, text);
      return source === undefined ? said : `${said} ${words.own.source(source)}`;
    }),
});

const refusalText = (words: RoofMessages, { wrong, accepted }: Complaint): string => {
  const said = refusalSaid(words.lang, wrong);
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}. ${words.own.accepted(refusalSaid(words.lang, accepted))}`;
};

/** What keeps the roof from being figured, each with the way to its answer. */
export const Refusals = ({ desk, own }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const words = roofWordsOf(desk);
  if (own.read.ok) return null;
  return (
    <section class="paper refusals" role="status" id="refusals">
      <h2>{words.own.refusedTitle}</h2>
      <p>{words.own.refused(own.read.complaints.length)}</p>
      <ul>
        {own.read.complaints.map((one) => {
          const field = fieldAt(own.draft, one.path);
          const said = refusalText(words, one);
          return (
            <li key={`${one.path} ${said}`}>
              {field && (
                <button
                  type="button"
                  class="link"
                  onClick={() => document.getElementById(idOf(field.id))?.focus()}
                >
                  {labelOf(words, field.id, own.draft)}
                </button>
              )}
              {!field && <b>{one.path}</b>} {said}
            </li>
          );
        })}
      </ul>
    </section>
  );
};
