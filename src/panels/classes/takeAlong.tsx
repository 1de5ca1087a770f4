import { useState } from 'preact/hooks';
import { csvOf } from '../../records/csv';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import type { Offered } from '../saveFile';
import type { ReportProps } from './reportProps';
import { competencyText } from './competencyFile';
import { ExportSheet } from './exportSheet';
import { learnerTable, runTable, type Table } from './reportRows';

/** The report as files; each is shown whole before it is saved. */
export const TakeAlong = ({ desk, report, assignment, line }: ReportProps) => {
  const { sheet, results } = classWordsOf(desk).classes;
  const [file, setFile] = useState<Offered>();
  const name = assignment?.id ?? 'runs';
  const entries = report.learners.flatMap((row) => row.entries);
  const files = [
    ['runsCsv', sheet.runs, () => csvFile(desk, `${name}-runs`, runTable(desk, entries))],
    [
      'learnersCsv',
      sheet.learners,
      () => csvFile(desk, `${name}-learners`, learnerTable(desk, report.learners, line)),
    ],
    [
      'linesJson',
      sheet.lines,
      () => ({
        name: `${name}-lines.json`,
        text: competencyText(desk, report.learners, assignment),
        type: 'application/json',
      }),
    ],
  ] as const;
  return (
    <section class="paper sheetOf offPaper">
      <h2>{sheet.title}</h2>
      <div class="others">
        {files.map(([id, text, make]) => (
          <button type="button" class="btn" id={id} key={id} onClick={() => setFile(make())}>
            {text}
          </button>
        ))}
        <button type="button" class="btn" onClick={() => print()}>
          {results.print}
        </button>
      </div>
      {file && <ExportSheet desk={desk} file={file} close={() => setFile(undefined)} />}
    </section>
  );
};

/** Tells programs that a table is in UTF-8: some take it for something older without. */
const mark = '\ufeff';

/** The rows of the screen, and under them what they are and what they are not. */
const csvFile = (desk: Desk, name: string, { head, rows }: Table): Offered => ({
  name: `${name}.csv`,
  text: mark + csvOf([head, ...rows, [classWordsOf(desk).classes.notice11]]),
  type: 'text/csv',
});
