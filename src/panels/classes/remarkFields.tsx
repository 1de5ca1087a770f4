import { longestNote } from '../../content/classSchema';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { Radios } from '../radios';
import { putRemark, remarkOn } from './takeIn';

type Props = { readonly desk: Desk; readonly assignment: string; readonly learner: string };

/** One rating for all of a learner's work, and a note. */
export const RemarkFields = ({ desk, assignment, learner }: Props) => {
  const { remark: words } = classWordsOf(desk).classes;
  const remark = remarkOn(desk, assignment, learner);
  const about = { assignment, learner };
  const rate = (value: string): void => {
    const { note } = remark;
    putRemark(desk, about, value === '0' ? { note } : { note, rating: Number(value) });
  };
  const options = [words.clear, ...words.ratings].map((text, i) => ({ value: String(i), text }));
  return (
    <section class="paper sheetOf">
      <h2>{words.title}</h2>
      <div class="field">
        <span class="label">{words.rating}</span>
        <Radios label={words.rating} options={options} value={String(remark.rating ?? 0)} set={rate} />
      </div>
      <label class="field">
        <span class="label">{words.note}</span>
        <textarea
          id="note"
          rows={3}
          maxLength={longestNote}
          value={remark.note}
          onInput={({ currentTarget }) => putRemark(desk, about, { ...remark, note: currentTarget.value })}
        />
      </label>
      <p class="dim offPaper">{words.kept}</p>
    </section>
  );
};
