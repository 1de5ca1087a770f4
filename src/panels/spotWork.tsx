import { useState } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import type { Action } from '../core/site/action';
import { shows } from '../core/site/shows';
import type { ToolId } from '../core/instruments/tool';
import type { Offer, Picked, ReadAt, Spot } from '../present/offers/offer';
import { scaleSaid } from '../present/words/scaleSaid';
import { labelText, spotName } from '../present/words/spotNames';
import { wordsOf, type Desk } from './desk';
import { HoldSignal } from './holdSignal';
import { PickerField } from './picker';
import { Picture } from './picture';
import { Radios } from './radios';
import { isStill, settleOf } from './settle';
import { useSignal } from './useSignal';

type WorkProps = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly spot: Spot;
  readonly onAct: (action: Action) => void;
  /** Shown beside the act where the thumb is and the head has no room for it. */
  readonly undo?: () => void;
};

/** What the tool can do at one place: the acts, what is open in them, and the one filled button. */
export const SpotWork = ({ desk, attempt, spot, onAct, undo }: WorkProps) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const [chosen, setOffer] = useState<string>();
  // What was chosen before may be gone with the act: then the first is taken up, not what came into its place.
  const offer = (spot.offers.find(({ id }) => id === chosen) ?? spot.offers[0]) as Offer;
  const [picks, setPicks] = useState<Readonly<Record<string, Picked>>>({});
  const usual = usualPick(offer);
  const kept = picks[offer.id];
  const fits =
    kept === undefined ||
    offer.picker?.kind !== 'choice' ||
    offer.picker.options.some(({ value }) => value === kept);
  const pictured = offer.reading ?? spot.reading;
  const picked = fits && kept !== undefined ? kept : usual;
  return (
    <div class="act">
      {pictured && <ReadingPicture desk={desk} attempt={attempt} spot={spot} reading={pictured} />}
      {spot.offers.length > 1 && (
        <Radios
          small
          label={words.ui.site.acts}
          options={spot.offers.map((one) => ({ value: one.id, text: labelText(words, one.label) }))}
          value={offer.id}
          set={setOffer}
        />
      )}
      {offer.picker && (
        <PickerField
          picker={offer.picker}
          value={picked}
          set={(value) => setPicks({ ...picks, [offer.id]: value })}
          words={words}
          units={units}
          {...(pictured ? { seenIn: pictureId } : {})}
        />
      )}
      {offer.id.startsWith('signal.') && (
        <HoldSignal key={offer.id} desk={desk} offer={offer} onAct={onAct} />
      )}
      <div class="doing">
        {undo && (
          <button type="button" class="btn undo" onClick={undo}>
            {words.ui.site.undo}
          </button>
        )}
        <button
          type="button"
          class="btn main"
          id="main-act"
          data-act={offer.id}
          onClick={() => onAct(offer.act(picked))}
        >
          {labelText(words, offer.reading || offer.id === 'judge' ? ['act', 'read'] : offer.label)}
        </button>
      </div>
    </div>
  );
};

/** The picture says to a listener what the field below it asks for. */
const pictureId = 'seen-there';

const usualPick = ({ picker }: Offer): Picked => {
  if (!picker) return '';
  return picker.kind === 'choice' ? (picker.options[0]?.value ?? '') : picker.start;
};

/** Tools whose rule stands up, or that show their place beside the reading: their picture has to be higher. */
const standing: readonly ToolId[] = ['level', 'waterLevel', 'string', 'square', 'straightedge', 'storyPole'];

/** A class for the style sheet. A tape held otherwise than by its hook shows both its ends, one over the other. */
const kindOf = ({ tool, from }: ReadAt): string => {
  if (tool === 'tape' && from !== undefined) return 'double';
  return standing.includes(tool) ? 'standing' : '';
};

/** The tool's own picture: the learner takes the reading off it. */
const ReadingPicture = ({
  desk,
  attempt,
  spot,
  reading,
}: {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly spot: Spot;
  readonly reading: ReadAt;
}) => {
  const { theme, lang, motion } = useSignal(desk.settings);
  const shown = shows(attempt, reading);
  if (shown === undefined || reading.at === 'punch') return null;
  const words = wordsOf(desk);
  const label = `${spotName(words, spot)}. ${scaleSaid(words, attempt, { reading, shown })}`;
  return (
    <Picture
      id={pictureId}
      label={label}
      kind={kindOf(reading)}
      deps={[shown, theme, lang, spot.id, reading.from]}
      settle={isStill(motion) ? undefined : settleOf(reading.tool)}
      draw={(canvas, off) =>
        desk.drawings.reading(canvas, { attempt, ...reading, shown: offBy(shown, off), theme, lang })
      }
    />
  );
};

const offBy = (shown: number | string, off: number): number | string =>
  typeof shown === 'number' ? shown + off : shown;
