import type { Field } from '../../content/draft/fields';
import { answerOf, otherStock, type RoofDraft } from '../../content/draft/roofDraft';
import { usualOf } from '../../content/draft/usual';
import { lumber } from '../../core/stock/lumber';
import type { RoofMessages } from '../../present/words/roofMessages';

/** One question of the form, with what is wrong or to be thought of right under it. */

export type Beside = {
  /** Sentences that refuse the answer, and such as only ask to think. */
  readonly refused: readonly string[];
  readonly heeds: readonly string[];
};

type Props = {
  readonly field: Field;
  readonly draft: RoofDraft;
  readonly words: RoofMessages;
  readonly beside: Beside;
  readonly set: (typed: RoofDraft['typed']) => void;
};

export const FieldRow = (props: Props) => {
  const { field, draft, words, beside } = props;
  const id = idOf(field.id);
  const said = beside.refused.length + beside.heeds.length > 0;
  return (
    <div class={`ask1${beside.refused.length > 0 ? ' refused' : ''}`}>
      <label for={id}>{labelOf(words, field.id, draft)}</label>
      <Answer {...props} id={id} describedBy={said ? `${id}-said` : undefined} />
      {said && (
        <div class="saidOf" id={`${id}-said`}>
          {beside.refused.map((text) => (
            <p class="wrong" key={text}>
              {text}
            </p>
          ))}
          {beside.heeds.map((text) => (
            <p class="heed" key={text}>
              {text}
            </p>
          ))}
        </div>
      )}
    </div>
  );
};

export const idOf = (field: string): string => `own-${field.replace(/\./g, '-')}`;

/** Some kinds of roof call the same measure otherwise. */
export const labelOf = (
  { own }: RoofMessages,
  field: string,
  { style }: Pick<RoofDraft, 'style'>,
): string => {
  const family = style === 'shedBetween' ? 'shed' : style;
  return own.fields[`${field}.${family}`] ?? own.fields[field] ?? field;
};

type AnswerProps = Props & { readonly id: string; readonly describedBy: string | undefined };

const Answer = (props: AnswerProps) => {
  if (props.field.kind === 'choice') return <Choice {...props} />;
  if (props.field.kind === 'stock') return <Stock {...props} />;
  const { field } = props;
  return (
    <Text
      {...props}
      at={field.id}
      hint={'optional' in field && field.optional ? hintOf(props) : ''}
      unit={field.kind === 'rise' ? props.words.own.inTwelve : undefined}
    />
  );
};

/** What the roof has where nothing is typed. */
const hintOf = ({ field, draft, words: { own } }: Props): string => {
  const usual = usualOf(draft, field.id);
  return usual === undefined ? own.asLeft : own.asUsual(usual);
};

type TextProps = Omit<AnswerProps, 'field'> & {
  readonly at: string;
  readonly hint: string;
  readonly unit?: string | undefined;
  readonly label?: string;
};

const Text = ({ id, at, draft, set, describedBy, beside, hint, unit, label }: TextProps) => (
  <span class="typing">
    <input
      type="text"
      id={id}
      name={at}
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      maxLength={120}
      value={draft.typed[at] ?? ''}
      placeholder={hint}
      aria-label={label}
      aria-invalid={beside.refused.length > 0}
      aria-describedby={describedBy}
      onInput={(event) => set({ [at]: event.currentTarget.value })}
    />
    {unit && <span class="unit">{unit}</span>}
  </span>
);

const Choice = ({ id, field, draft, words, set, describedBy, beside }: AnswerProps) => (
  <select
    id={id}
    name={field.id}
    value={answerOf(draft.typed, field.id)}
    aria-describedby={describedBy}
    aria-invalid={beside.refused.length > 0}
    onChange={(event) => set({ [field.id]: event.currentTarget.value })}
  >
    {Object.keys(field.kind === 'choice' ? field.options : {}).map((option) => (
      <option value={option} key={option}>
        {words.own.options[`${field.id}.${option}`] ?? option}
      </option>
    ))}
  </select>
);

const Stock = (props: AnswerProps) => {
  const { id, field, draft, words, set, describedBy, beside } = props;
  const optional = field.kind === 'stock' && field.optional === true;
  const picked = draft.typed[field.id] ?? '';
  return (
    <span class="stock">
      <select
        id={id}
        name={field.id}
        value={picked}
        aria-describedby={describedBy}
        aria-invalid={beside.refused.length > 0}
        onChange={(event) => set({ [field.id]: event.currentTarget.value })}
      >
        {optional && <option value="">{words.own.stockUsual}</option>}
        {lumber.map(({ nominal }) => (
          <option value={nominal} key={nominal}>
            {nominal}
          </option>
        ))}
        <option value={otherStock}>{words.own.stockOther}</option>
      </select>
      {picked === otherStock &&
        (['thickness', 'depth'] as const).map((size) => (
          <Text
            {...props}
            key={size}
            id={`${id}-${size}`}
            at={`${field.id}.${size}`}
            hint={words.own[size]}
            label={`${labelOf(words, field.id, draft)}: ${words.own[size]}`}
          />
        ))}
    </span>
  );
};
