import { useRef } from 'preact/hooks';

export type RadioOption = { readonly value: string; readonly text: string; readonly data?: string };

type Props = {
  readonly label: string;
  readonly options: readonly RadioOption[];
  readonly value: string;
  readonly set: (value: string) => void;
  readonly small?: boolean;
  /** Id of what the choice is read from. */
  readonly seenIn?: string | undefined;
};

/** One of a few, as buttons: touched, or gone through with the arrow keys. */
export const Radios = ({ label, options, value, set, small = false, seenIn }: Props) => {
  const host = useRef<HTMLDivElement>(null);
  const at = options.findIndex((option) => option.value === value);
  const onKey = (event: KeyboardEvent): void => {
    const by = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const next = (at + by + options.length) % options.length;
    set(options[next]?.value ?? value);
    host.current?.querySelectorAll<HTMLElement>('[role="radio"]')[next]?.focus();
  };
  return (
    <div
      class={`choice ${options.length > 5 ? 'many' : ''}`}
      role="radiogroup"
      aria-label={label}
      ref={host}
      onKeyDown={onKey}
    >
      {options.map((option, i) => (
        <button
          type="button"
          role="radio"
          class={`btn ${small ? 'small' : ''}`}
          key={option.value}
          data-value={option.value}
          aria-checked={option.value === value}
          {...(option.value === value ? { 'aria-describedby': seenIn } : {})}
          tabIndex={i === Math.max(0, at) ? 0 : -1}
          onClick={() => set(option.value)}
        >
          {option.text}
        </button>
      ))}
    </div>
  );
};
