import { useState } from 'preact/hooks';
import { change, wordsOf, type Desk } from './desk';

/** How loud one group of sounds is: slid, or moved with the arrow keys, and told in figures. Kept when let go of. */
export const Volume = ({
  desk,
  of,
}: {
  readonly desk: Desk;
  readonly of: 'workVolume' | 'machineVolume';
}) => {
  const { settings: names } = wordsOf(desk).ui;
  const kept = desk.settings.value[of];
  const [moving, setMoving] = useState<number>();
  const shown = names.volume(moving ?? kept);
  return (
    <label class="field volume">
      <span class="label">{names[of]}</span>
      <output aria-hidden="true">{shown}</output>
      <input
        id={of}
        type="range"
        min={0}
        max={100}
        step={10}
        value={moving ?? kept}
        disabled={!desk.settings.value.sound}
        aria-label={names[of]}
        aria-valuetext={shown}
        onInput={(event) => setMoving(Number(event.currentTarget.value))}
        onChange={(event) => {
          change(desk, { [of]: Number(event.currentTarget.value) });
          setMoving(undefined);
        }}
      />
    </label>
  );
};
