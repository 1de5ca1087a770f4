import { useRef } from 'preact/hooks';

type Props = {
  readonly id: string;
  readonly text: string;
  readonly take: (files: readonly File[]) => void;
  /** Looks like words that lead elsewhere. */
  readonly link?: boolean;
  readonly many?: boolean;
  readonly folder?: boolean;
  /** Not now. The button stays where it is, and keeps the keyboard. */
  readonly off?: boolean;
};

/** A button that opens the device's own choice of files. */
export const FilePick = ({
  id,
  text,
  take,
  link = false,
  many = false,
  folder = false,
  off = false,
}: Props) => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button
        type="button"
        class={link ? 'link' : 'btn'}
        id={id}
        aria-disabled={off}
        onClick={() => off || input.current?.click()}
      >
        {text}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        id={`${id}Input`}
        accept={folder ? undefined : '.json,application/json'}
        multiple={many || folder}
        {...(folder ? { webkitdirectory: true } : {})}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same file may be picked once more.
          currentTarget.value = '';
          if (files.length > 0) take(files);
        }}
      />
    </>
  );
};
