import { useState } from 'preact/hooks';
import type { Read } from '../../content/complaint';
import type { RoofDraft } from '../../content/draft/roofDraft';
import { refusalSaid } from '../../present/roofs/said';
import { placeTold } from '../../present/words/refusalMessages';
import { offer } from '../saveFile';
import type { Desk } from '../desk';
import { roofWordsOf } from './roofWords';
import { linkTo, openText, startOver, textOf, type OwnRoof } from './ownRoof';
import { Practice } from './practice';

/** What can be done with the roof in the form. */
export const RoofActions = ({ desk, own }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const words = roofWordsOf(desk);
  return (
    <section class="paper ownActs">
      <button
        type="button"
        class="btn main"
        id="toCard"
        disabled={!own.read.ok}
        onClick={() => (desk.screen.value = 'card')}
      >
        {words.own.card}
      </button>
      <Practice desk={desk} own={own} />
      <hr />
      <Share desk={desk} own={own} />
      <button
        type="button"
        class="btn small"
        id="saveRoof"
        onClick={() =>
          offer({ name: fileNameOf(own.draft), type: 'application/json', text: textOf(own.draft) })
        }
      >
        {words.own.save}
      </button>
      <OpenFile desk={desk} />
      <StartOver desk={desk} />
      <p class="dim">{words.own.kept}</p>
    </section>
  );
};

/** Letters and numbers of its name, and nothing a disk could trip over. */
export const fileNameOf = ({ typed, style }: RoofDraft): string => {
  const name = (typed['name'] ?? '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `${name === '' ? style : name}.roof.json`;
};

const Share = ({ desk, own }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const words = roofWordsOf(desk);
  const [link, show] = useState<{ readonly text: string; readonly copied: boolean }>();
  const share = async (): Promise<void> => {
    const text = linkTo(own.draft, location.href);
    const copied = await (navigator.clipboard?.writeText(text) ?? Promise.reject(new Error('none')))
      .then(() => true)
      .catch(() => false);
    show({ text, copied });
  };
  const stale = link !== undefined && link.text !== linkTo(own.draft, location.href);
  return (
    <div class="shareOf">
      <button
        type="button"
        class="btn small"
        id="shareRoof"
        disabled={!own.read.ok}
        onClick={() => void share()}
      >
        {words.own.share}
      </button>
      {link && !stale && (
        <p role="status">
          <label>
            {link.copied ? words.own.shared : words.own.shareBy}
            <input
              type="text"
              readOnly
              id="roofLink"
              value={link.text}
              onFocus={(event) => event.currentTarget.select()}
            />
          </label>
        </p>
      )}
    </div>
  );
};

const OpenFile = ({ desk }: { readonly desk: Desk }) => {
  const words = roofWordsOf(desk);
  const [refused, refuse] = useState<{ readonly name: string; readonly why: Read<never> }>();
  const open = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const read = openText(desk, await file.slice(0, 1_000_001).text());
    refuse(read.ok ? undefined : { name: file.name, why: read });
  };
  return (
    <div class="openOf">
      <label class="btn small">
        {words.own.load}
        <input
          type="file"
          id="openRoof"
          class="hidden"
          accept=".json,application/json"
          onChange={(event) => {
            const input = event.currentTarget;
            void open(input.files?.[0]).then(() => (input.value = ''));
          }}
        />
      </label>
      {refused && <Unread desk={desk} title={words.own.loadNot(refused.name)} why={refused.why} />}
    </div>
  );
};

/** Why a file or a link was not opened. */
export const Unread = ({
  desk,
  title,
  why,
}: {
  readonly desk: Desk;
  readonly title: string;
  readonly why: Read<unknown>;
}) => {
  const { lang } = desk.settings.value;
  const words = roofWordsOf(desk);
  if (why.ok) return null;
  return (
    <div class="unread" role="alert">
      <p>
        <b>{title}</b>
      </p>
      <ul>
        {why.complaints.slice(0, 5).map((one) => {
          const wrong = refusalSaid(lang, one.wrong);
          return (
            <li key={`${one.path} ${wrong}`}>
              <code>{placeTold(lang, one)}</code>: {wrong}.{' '}
              {words.own.accepted(refusalSaid(lang, one.accepted))}
            </li>
          );
        })}
      </ul>
    </div>
  );
};

const StartOver = ({ desk }: { readonly desk: Desk }) => {
  const words = roofWordsOf(desk);
  const [asking, ask] = useState(false);
  if (!asking)
    return (
      <button type="button" class="btn small" id="freshRoof" onClick={() => ask(true)}>
        {words.own.fresh}
      </button>
    );
  return (
    <div class="sure" role="group" aria-label={words.own.freshSure}>
      <p>{words.own.freshSure}</p>
      <button
        type="button"
        class="btn small"
        id="freshYes"
        onClick={() => {
          startOver(desk);
          ask(false);
        }}
      >
        {words.own.yes}
      </button>
      <button type="button" class="btn small" onClick={() => ask(false)}>
        {words.own.no}
      </button>
    </div>
  );
};
