import { useState } from 'preact/hooks';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { useSignal } from '../useSignal';
import type { Intake } from './classState';
import { refusedLine } from './refusedLine';
import { FilePick } from './filePick';
import { takeIn } from './takeIn';

/** Files come in by choice, by folder or by dropping them; how far they are; what could not be read. */
export const TakeInSheet = ({ desk }: { readonly desk: Desk }) => {
  const { take } = classWordsOf(desk).classes;
  const [over, setOver] = useState(false);
  const marking = useSignal(desk.classes.marking);
  const intake = useSignal(desk.classes.intake);
  const came = (files: readonly File[]): void => void takeIn(desk, files);
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    came([...(event.dataTransfer?.files ?? [])]);
  };
  return (
    <section
      class={`paper sheetOf takeIn offPaper ${over ? 'over' : ''}`}
      onDragOver={(event) => (event.preventDefault(), setOver(true))}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <h2>{take.title}</h2>
      <p>{take.says}</p>
      <div class="others">
        <FilePick id="takeFiles" text={take.files} take={came} many off={marking !== undefined} />
        <FilePick
          id="takeFolder"
          text={take.folder}
          take={(files) => came(files.filter(isJson))}
          folder
          off={marking !== undefined}
        />
      </div>
      {marking && (
        <div class="marking">
          <progress max={marking.of} value={marking.through} aria-label={take.title} />
          <span class="tn" id="marking">
            {take.going(marking.through, marking.of)}
          </span>
          <button type="button" class="btn small" id="stopMarking" onClick={marking.stop}>
            {take.stop}
          </button>
        </div>
      )}
      <div role="status">{intake && !marking && <Came desk={desk} intake={intake} />}</div>
    </section>
  );
};

/** A folder holds other things too. */
const isJson = ({ name }: File): boolean => /\.json$/i.test(name);

const Came = ({
  desk,
  intake: { read, of, twice, wrong, kept },
}: {
  readonly desk: Desk;
  readonly intake: Intake;
}) => {
  const { take } = classWordsOf(desk).classes;
  const says = [
    read < of ? take.stopped(read, of) : take.done(read),
    ...(twice > 0 ? [take.twice(twice)] : []),
    ...(kept ? [] : [take.unkept]),
  ];
  return (
    <>
      <p id="came">{says.join(' ')}</p>
      {wrong.length > 0 && (
        <>
          <h3>{take.notRuns}</h3>
          <ul class="wrong">
            {wrong.map((one) => (
              <li key={one}>{refusedLine(classWordsOf(desk), one)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
};
