import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { encode } from 'uqr';
import { assignmentText, type Assignment } from '../../content/assignment';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { offer } from '../saveFile';
import { linkTo } from './outActs';

type Props = { readonly desk: Desk; readonly assignment: Assignment };

/** An assignment ready to give out: its link, the same as a file, and as a code to scan. */
export const OutLink = ({ desk, assignment }: Props) => {
  const { out } = classWordsOf(desk).classes;
  const link = useMemo(() => linkTo(assignment), [assignment]);
  const [said, say] = useState('');
  const shown = useRef<HTMLInputElement>(null);
  useEffect(() => shown.current?.focus(), []);
  const copy = (): void =>
    void navigator.clipboard.writeText(link).then(
      () => say(out.copied),
      () => say(out.notCopied),
    );
  const save = (): void =>
    offer({
      name: `${assignment.id}.assignment.json`,
      text: assignmentText(assignment),
      type: 'application/json',
    });
  return (
    <div class="ready">
      <h2>{out.made}</h2>
      <label class="field">
        <span class="label">{out.link}</span>
        <input
          type="text"
          id="link"
          ref={shown}
          readOnly
          value={link}
          onFocus={({ currentTarget }) => currentTarget.select()}
        />
      </label>
      <div class="others">
        <button type="button" class="btn" id="copyLink" onClick={copy}>
          {out.copy}
        </button>
        <button type="button" class="btn" id="saveAssignment" onClick={save}>
          {out.file}
        </button>
      </div>
      <p role="status">{said}</p>
      <Scan link={link} says={out.qr} long={out.long} />
      <p>{out.codes}</p>
      <hr />
    </div>
  );
};

/** Light modules around it, as the standard (ISO/IEC 18004) asks. */
const quiet = 4;

const Scan = ({
  link,
  says,
  long,
}: {
  readonly link: string;
  readonly says: string;
  readonly long: string;
}) => {
  const code = useMemo(() => modulesOf(link), [link]);
  if (!code) return <p class="dim">{long}</p>;
  return (
    <figure class="scan">
      <svg
        viewBox={`0 0 ${code.size} ${code.size}`}
        role="img"
        aria-label={says}
        shape-rendering="crispEdges"
      >
        <path d={`M0 0H${code.size}V${code.size}H0z`} fill="#fff" />
        <path d={code.path} fill="#000" />
      </svg>
      <figcaption class="dim">{says}</figcaption>
    </figure>
  );
};

/** The dark modules, one square each; undefined for a link that no code holds. */
const modulesOf = (link: string): { readonly size: number; readonly path: string } | undefined => {
  try {
    const { size, data } = encode(link, { border: quiet, ecc: 'M' });
    const dark = data.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : [])));
    return { size, path: dark.join('') };
  } catch {
    return undefined;
  }
};
