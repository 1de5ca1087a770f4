import { useEffect, useMemo } from 'preact/hooks';
import { passLine } from '../../core/score/scored';
import { reportOf } from '../../records/report';
import { errorOn, normOn, type Desk } from '../desk';
import { classWordsOf } from './classWords';
import { useSignal } from '../useSignal';
import { ClassReport } from './classReport';
import { LearnerSheet } from './learnerSheet';
import { entriesOf, fetchFiles } from './takeIn';
import { TakeInSheet } from './takeInSheet';

/** Runs come in at the top; below it the class, or one learner of it. */
export const ResultsPage = ({ desk }: { readonly desk: Desk }) => {
  const { classes: words } = classWordsOf(desk);
  const { classes } = desk;
  useEffect(() => void fetchFiles(desk), []);
  const files = useSignal(classes.files);
  const given = useSignal(classes.given);
  const picked = useSignal(classes.shown);
  const learner = useSignal(classes.learner);
  useSignal(classes.remarks);
  const proof = useSignal(desk.proof);
  const shown = picked ?? given[0]?.id ?? '';
  const entries = useMemo(() => entriesOf(desk, shown), [files, shown, given]);
  const report = useMemo(
    () =>
      reportOf(entries, {
        errorOn: (level) => errorOn(desk, level),
        normOn: (level) => normOn(desk, level),
      }),
    [entries, proof],
  );
  const assignment = given.find(({ id }) => id === shown);
  const row = report.learners.find(({ code }) => code === learner);
  const of = { desk, report, assignment, line: assignment?.passLine ?? passLine.total };
  return (
    <div class="resultsPage">
      {!row && (
        <>
          <TakeInSheet desk={desk} />
          <PickAssignment desk={desk} shown={shown} />
        </>
      )}
      {row ? (
        <LearnerSheet {...of} row={row} key={row.code} />
      ) : report.learners.length === 0 ? (
        <p class="paper sheetOf">{words.results.none}</p>
      ) : (
        <ClassReport {...of} />
      )}
    </div>
  );
};

const PickAssignment = ({ desk, shown }: { readonly desk: Desk; readonly shown: string }) => {
  const { classes: words, classDoor } = classWordsOf(desk);
  const { given, shown: picked } = desk.classes;
  return (
    <label class="field which">
      <span class="label">{words.results.which}</span>
      <select id="which" value={shown} onChange={({ currentTarget }) => (picked.value = currentTarget.value)}>
        {given.value.map(({ id, label = '' }) => (
          <option value={id} key={id}>
            {label === '' ? classDoor.unnamed : label} ({id})
          </option>
        ))}
        <option value="">{words.results.without}</option>
      </select>
    </label>
  );
};
