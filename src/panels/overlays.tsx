import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { readLooks } from '../content/settingsSchema';
import { usualLooks } from '../session/jobState';
import type { Settings } from '../session/settings';
import { againstWall } from '../core/level/layout';
import { catalogues, type Messages } from '../present/words/messages';
import { wordsOn } from '../present/words/jobWords';
import type { Level } from '../core/level/level';
import { forget } from './classes/takenActs';
import { change, jobOf, wordsOf, type Desk } from './desk';
import { Radios } from './radios';
import { useSignal } from './useSignal';
import { Volume } from './volume';

/** What lies over a screen for a while: settings, and the words of the trade. Escape closes it. */
export const Overlays = ({ desk }: { readonly desk: Desk }) => {
  const overlay = useSignal(desk.overlay);
  if (overlay === 'settings') return <SettingsPanel desk={desk} />;
  return overlay === 'words' ? <WordsPanel desk={desk} /> : null;
};

const Sheet = ({
  desk,
  title,
  children,
}: {
  readonly desk: Desk;
  readonly title: string;
  readonly children: ComponentChildren;
}) => {
  const host = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    host.current?.showModal();
    // The button that is focused may stand at the foot of a long sheet: it is read from its head all the same.
    host.current?.scrollTo(0, 0);
  }, []);
  const close = (): void => {
    desk.overlay.value = undefined;
  };
  return (
    <dialog class="paper" ref={host} onClose={close} aria-labelledby="sheet-title">
      <h2 id="sheet-title">{title}</h2>
      {children}
      <div class="go">
        <button type="button" class="btn main" onClick={() => host.current?.close()}>
          {wordsOf(desk).ui.settings.close}
        </button>
      </div>
    </dialog>
  );
};

const SettingsPanel = ({ desk }: { readonly desk: Desk }) => {
  const { settings: names } = wordsOf(desk).ui;
  useSignal(desk.settings);
  return (
    <Sheet desk={desk} title={names.title}>
      <div class="fields">
        {settingRows(wordsOf(desk)).map((row) => (
          <SettingRow desk={desk} row={row} key={row.key} />
        ))}
        <Volume desk={desk} of="workVolume" />
        <Volume desk={desk} of="machineVolume" />
      </div>
      <Looks desk={desk} />
      <Erase desk={desk} />
    </Sheet>
  );
};

/** When a job that is checked off is due again. What cannot be used is said, and the last good days stay. */
const Looks = ({ desk }: { readonly desk: Desk }) => {
  const { settings: names } = wordsOf(desk).ui;
  const [bad, setBad] = useState(false);
  const put = (typed: string): void => {
    const looks = readLooks(typed);
    setBad(!looks);
    if (looks) change(desk, { looks: [...looks] });
  };
  return (
    <label class="field">
      <span class="label">{names.looks}</span>
      <input
        id="looks"
        inputMode="numeric"
        value={(desk.settings.value.looks ?? usualLooks).join(', ')}
        aria-invalid={bad}
        aria-describedby="looks-bad"
        onChange={(event) => put(event.currentTarget.value)}
      />
      <span id="looks-bad" role="status" class="bad">
        {bad ? names.looksBad : ''}
      </span>
    </label>
  );
};

type Choice = Exclude<keyof Settings, 'looks' | 'workVolume' | 'machineVolume'>;

/** One setting: what it is called and what it may be. */
type Row = {
  readonly key: Choice;
  readonly label: string;
  readonly options: readonly (readonly [Settings[Choice], string])[];
};

const settingRows = ({ ui }: Messages): readonly Row[] => {
  const names = ui.settings;
  const row = (key: Choice, label: string, ...options: Row['options']): Row => ({
    key,
    label,
    options,
  });
  return [
    row('lang', names.language, ['en', 'English'], ['es', 'Español']),
    row('theme', names.theme, ['day', names.day], ['night', names.night]),
    row('units', names.units, ['feet', names.feet], ['decimal', names.decimal], ['mm', names.mm]),
    row('hand', names.hand, ['right', names.left], ['left', names.right]),
    row('text', names.text, ['100', '100 %'], ['150', '150 %'], ['200', '200 %']),
    row('keys', names.keys, [true, names.on], [false, names.off]),
    row('motion', names.motion, ['device', names.asDevice], ['full', names.moves], ['still', names.still]),
    row('sound', names.sound, [true, names.on], [false, names.off]),
  ];
};

const SettingRow = ({ desk, row: { key, label, options } }: { readonly desk: Desk; readonly row: Row }) => (
  <div class="field">
    <span class="label">{label}</span>
    <Radios
      label={label}
      options={options.map(([value, text]) => ({ value: String(value), text }))}
      value={String(desk.settings.value[key])}
      set={(picked) => {
        const found = options.find(([value]) => String(value) === picked);
        if (found) change(desk, { [key]: found[0] } as Partial<Settings>);
      }}
    />
  </div>
);

/** Deletes all that this device keeps, in two steps. */
const Erase = ({ desk }: { readonly desk: Desk }) => {
  const { settings: names } = wordsOf(desk).ui;
  const [sure, setSure] = useState(false);
  const erase = (): void => {
    if (!sure) return setSure(true);
    void desk.store.erase().then(() => {
      desk.heads.value = [];
      desk.session.value = undefined;
      forget(desk);
      desk.screen.value = 'start';
      desk.overlay.value = undefined;
    });
  };
  return (
    <button type="button" class="btn" onClick={erase}>
      {sure ? names.eraseSure : names.erase}
    </button>
  );
};

/** Tools whose names are not said elsewhere. */
const glossaryTools = ['waterLevel', 'bob', 'square', 'straightedge', 'storyPole', 'pattern'] as const;

type Term = readonly [string, string];

/** What the roof is made of, as the job calls it. */
const termsOf = (job: Level | undefined): readonly Term[] => {
  const wall = job !== undefined && againstWall(job);
  const [en, es] = (['en', 'es'] as const).map((lang) =>
    wall ? wordsOn(lang, job).trade : catalogues[lang].trade,
  ) as [Trade, Trade];
  const free: readonly Term[] = [
    [en.member.joist(1), es.member.joist(1)],
    [en.member.collar(1), es.member.collar(1)],
  ];
  return [
    [en.member.ridge, es.member.ridge],
    [en.member.rafter(1, en.side.yard), es.member.rafter(1, es.side.yard)],
    [en.member.block(1, en.side.yard), es.member.block(1, es.side.yard)],
    ...(wall ? [] : free),
    [en.member.post(1), es.member.post(1)],
    ...(wall ? [] : [[en.member.braceAlong, es.member.braceAlong] as const]),
    [en.member.plate(en.side.street), es.member.plate(es.side.street)],
  ];
};
type Trade = Messages['trade'];

/** Terms as pairs, each in both languages. */
const WordsPanel = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  const { en, es } = catalogues;
  const pairs: readonly Term[] = [
    ...termsOf(jobOf(desk)),
    [en.trade.tool.tack, es.trade.tool.tack],
    [en.trade.tool.nail, es.trade.tool.nail],
    [en.trade.tool.draw, es.trade.tool.draw],
    ...glossaryTools.map((tool) => [en.trade.finder[tool], es.trade.finder[tool]] as const),
    [en.trade.fault.crownDown, es.trade.fault.crownDown],
    [en.trade.fault.splitAtNotch, es.trade.fault.splitAtNotch],
    [en.ui.talk.figures.plumbCut, es.ui.talk.figures.plumbCut],
    [en.ui.talk.figures.seat, es.ui.talk.figures.seat],
    [en.ui.talk.figures.tail, es.ui.talk.figures.tail],
  ];
  return (
    <Sheet desk={desk} title={words.ui.words.title}>
      <dl class="terms">
        {pairs.map(([one, other]) => (
          <div key={one}>
            <dt lang="en" style="font-weight:650">
              {one}
            </dt>
            <dd lang="es" class="dim">
              {other}
            </dd>
          </div>
        ))}
      </dl>
    </Sheet>
  );
};
