import type { ClassMessages } from '../../present/words/classMessages';
import { pick } from '../../present/words/spotNames';
import type { Tallied } from '../../records/report';
import { classWordsOf } from './classWords';
import type { ReportProps } from './reportProps';
import { Bars } from './bars';
import { TakeAlong } from './takeAlong';
import { jobText, learnerTable, whoText } from './reportRows';
import { TableOf } from './tableOf';

/** A class: its learners by code, what was broken, missed and left out most, and the files of it. */
export const ClassReport = ({ desk, report, assignment, line }: ReportProps) => {
  const words = classWordsOf(desk);
  const { results, notice11 } = words.classes;
  const bars = (title: string, tallied: readonly Tallied[], name: (code: string) => string) => (
    <Bars
      title={title}
      rows={tallied.map(({ code, runs }) => [name(code), runs])}
      head={results.barHead}
      all={report.counted}
      none={results.nothing}
    />
  );
  return (
    <>
      <section class="paper sheetOf" id="report">
        <h2>{results.seeClass}</h2>
        <p class="first">{notice11}</p>
        <TableOf
          table={learnerTable(desk, report.learners, line)}
          act={(i) => {
            const code = report.learners[i]?.code ?? '';
            return {
              text: results.details,
              id: `learner-${code}`,
              go: () => (desk.classes.learner.value = code),
            };
          }}
        />
        {report.twins.map(({ level, codes }) => (
          <p class="caution" key={`${level} ${codes.join(' ')}`}>
            {results.twins(jobText(desk, level), codes.map((code) => whoText(words, code)).join(', '))}
          </p>
        ))}
        <p class="dim">
          {results.counted(report.counted)} {results.countsSay} {results.order}
        </p>
      </section>
      <div class="sheets three">
        {bars(results.broken, report.broken, (code) => ruleName(words, code))}
        {bars(results.missedMost, report.missed, (code) => pick(words.trade.fault, code))}
        {bars(results.unchecked, report.unchecked, (code) => ruleName(words, code))}
      </div>
      <TakeAlong desk={desk} report={report} assignment={assignment} line={line} />
    </>
  );
};

export const ruleName = (words: ClassMessages, code: string): string =>
  code === 'cameDown' ? words.ui.site.down : (words.rules[code]?.name ?? code);
