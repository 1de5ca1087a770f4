import { parseLength } from '../core/units/lengthText';
import type { Picked, Picker } from '../present/offers/offer';
import { labelText } from '../present/words/spotNames';
import type { Messages } from '../present/words/messages';
import { hair, lineAndHair, readingText, type Hair, type Units } from '../present/words/numbers';
import { Measure } from './measure';
import { Radios } from './radios';

type Props = {
  readonly picker: Picker;
  readonly value: Picked;
  readonly set: (value: Picked) => void;
  readonly words: Messages;
  readonly units: Units;
  /** Id of what it is read from, where that can be looked at. */
  readonly seenIn?: string;
};

/** How what is open gets picked: by buttons, by arrow keys, or by typing a length. */
export const PickerField = (props: Props) =>
  props.picker.kind === 'choice' ? (
    <ChoiceField {...props} picker={props.picker} />
  ) : (
    <LengthField {...props} />
  );

const ChoiceField = ({
  picker,
  value,
  set,
  words,
  seenIn,
}: Props & { readonly picker: Extract<Picker, { kind: 'choice' }> }) => {
  const label = labelText(words, picker.label);
  const options = picker.options.map((option) => ({
    value: option.value,
    text: labelText(words, option.label),
  }));
  return (
    <div class="picker">
      <div class="label">{label}</div>
      <Radios label={label} options={options} value={String(value)} set={set} seenIn={seenIn} />
    </div>
  );
};

type Stride = readonly [number, string];

const strides: readonly Stride[] = [
  [-1, '−1'],
  [-1 / 4, '−¼'],
  [-1 / 16, '−1⁄16'],
  [1 / 16, '+1⁄16'],
  [1 / 4, '+¼'],
  [1, '+1'],
];

const keys: Readonly<Record<string, number>> = {
  ArrowLeft: -1 / 16,
  ArrowRight: 1 / 16,
  ArrowDown: -1 / 4,
  ArrowUp: 1 / 4,
  PageDown: -1,
  PageUp: 1,
};

/** No finer than what can be told there: a smaller stride becomes the smallest there is. */
const strideBy = (by: number, coarse: number): number => Math.sign(by) * Math.max(Math.abs(by), coarse);

const stridesFor = (coarse: number): readonly Stride[] => strides.filter(([by]) => Math.abs(by) >= coarse);

const LengthField = ({ picker, value, set, words, units, seenIn }: Props) => {
  const bounds = picker.kind === 'length' ? picker : { from: -2000, to: 2000 };
  const label = picker.kind === 'length' ? labelText(words, picker.label) : words.ui.act.what;
  const coarse = (picker.kind === 'reading' && picker.coarse) || 0;
  const now = Number(value);
  const put = (next: number): void =>
    set(Math.min(bounds.to, Math.max(bounds.from, Math.round(next * 64) / 64 + 0)));
  const onKey = (event: KeyboardEvent): void => {
    const stride = keys[event.key];
    if (stride === undefined || (event.target as HTMLElement).tagName === 'INPUT') return;
    event.preventDefault();
    event.stopPropagation();
    put(now + strideBy(stride, coarse));
  };
  const { line, side } = lineAndHair(now);
  const reads = picker.kind === 'reading' && coarse === 0 && units === 'feet';
  return (
    <div class="picker">
      <div class="label">{label}</div>
      <div class="say">
        <div
          class="value"
          role="spinbutton"
          tabIndex={0}
          aria-label={label}
          aria-valuenow={now}
          aria-valuetext={readingText(words, now, units)}
          aria-describedby={seenIn}
          onKeyDown={onKey}
        >
          <Measure inches={reads ? line : now} units={units} words={words} />
          {reads && side !== 'on' && <small>{words.ui.act.hairSaid[side]}</small>}
        </div>
        <TypedLength put={put} label={`${label}, ${words.ui.act.inches}`} seenIn={seenIn} />
      </div>
      <div class="steps">
        {stridesFor(coarse).map(([by, text]) => (
          <button
            type="button"
            class="btn"
            key={text}
            onClick={() => put(now + by)}
            aria-label={`${text} ${words.ui.act.inches}`}
          >
            {text}
          </button>
        ))}
      </div>
      {reads && (
        <Radios
          small
          label={label}
          options={hairs.map((one) => ({ value: one, text: words.ui.act.hair[one] }))}
          value={side}
          set={(one) => put(line + hairBy[one as Hair])}
        />
      )}
    </div>
  );
};

const hairs: readonly Hair[] = ['under', 'on', 'over'];
const hairBy: Readonly<Record<Hair, number>> = { under: -hair, on: 0, over: hair };

/** Whoever has a keyboard may type it: 58 5/8. Nothing happens until it can be read. */
const TypedLength = ({
  put,
  label,
  seenIn,
}: {
  readonly put: (value: number) => void;
  readonly label: string;
  readonly seenIn: string | undefined;
}) => (
  <input
    type="text"
    class="typed"
    inputMode="text"
    autocomplete="off"
    aria-label={label}
    aria-describedby={seenIn}
    placeholder='5 3/16"'
    onInput={(event) => {
      const text = event.currentTarget.value.trim();
      const minus = text.startsWith('-');
      const read = parseLength(minus ? text.slice(1) : text);
      if (read !== undefined) put(minus ? -read : read);
    }}
  />
);
