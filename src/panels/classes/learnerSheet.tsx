import { useEffect, useState } from 'preact/hooks';
import { competencies } from '../../records/anchors';
import type { Entry, LearnerRow } from '../../records/report';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { Bars } from './bars';
import { ruleName } from './classReport';
import type { ReportProps } from './reportProps';
import { openReading } from './openReading';
import { RemarkFields } from './remarkFields';
import { learnerTable, runTable, whoText } from './reportRows';
import { TableOf } from './tableOf';
import { Turns } from './turns';

type Props = ReportProps & { readonly row: LearnerRow };

/** One learner: what the runs that hold come to, each run, and what the instructor makes of it. */
export const LearnerSheet = ({ desk, report, assignment, line, row }: Props) => {
  const words = classWordsOf(desk);
  const { results, notice11 } = words.classes;
  useEffect(() => {
    document.getElementById('toClass')?.focus();
    scrollTo(0, 0);
  }, []);
  const close = (): void => {
    desk.classes.learner.value = undefined;
    requestAnimationFrame(() => document.getElementById(`learner-${row.code}`)?.focus());
  };
  return (
    <>
      <p class="offPaper">
        <button type="button" class="btn small" id="toClass" onClick={close}>
          ‹ {results.close}
        </button>
      </p>
      <section class="paper sheetOf">
        <h2>
          {results.learner}: {whoText(words, row.code)}
        </h2>
        <p class="first">{notice11}</p>
        <TableOf table={learnerTable(desk, [row], line)} />
        <Turns desk={desk} row={row} line={line} />
      </section>
      <div class="sheets">
        <Lines desk={desk} row={row} />
        <Bars
          title={results.never}
          rows={row.unchecked.map(({ code, runs }) => [ruleName(words, code), runs])}
          head={results.barHead}
          all={row.counted.length}
          none={results.noNever}
        />
      </div>
      <Runs desk={desk} entries={row.entries} />
      <RemarkFields desk={desk} assignment={assignment?.id ?? ''} learner={row.code} />
      <p class="dim">
        {results.counted(report.counted)} {results.countsSay}
      </p>
    </>
  );
};

/** By line of competency: which of the four anchors was reached. */
const Lines = ({ desk, row }: { readonly desk: Desk; readonly row: LearnerRow }) => {
  const { anchor } = classWordsOf(desk).classes;
  return (
    <section class="paper sheetOf">
      <h2>{anchor.title}</h2>
      <dl class="terms askedOf">
        {competencies.map((line) => (
          <div key={line}>
            <dt>{anchor.line[line]}</dt>
            <dd>{anchor.says[row.anchors[line]]}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
};

const Runs = ({ desk, entries }: { readonly desk: Desk; readonly entries: readonly Entry[] }) => {
  const { results } = classWordsOf(desk).classes;
  const [failed, setFailed] = useState(false);
  const open = (key: string): void => setFailed(!openReading(desk, key));
  return (
    <section class="paper sheetOf">
      <h2>{results.all}</h2>
      <TableOf
        table={runTable(desk, entries)}
        act={(i) => {
          const entry = entries[i];
          return entry?.marked.told
            ? { text: results.look, id: `open-${i}`, go: () => open(entry.key) }
            : undefined;
        }}
      />
      <p role="status">{failed ? results.notHere : ''}</p>
    </section>
  );
};
