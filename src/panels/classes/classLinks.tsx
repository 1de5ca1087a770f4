import { readAssignment } from '../../content/assignment';
import { wordsOf, type Desk } from '../desk';
import { useSignal } from '../useSignal';
import { FilePick } from './filePick';
import { openTaken, takeOn } from './takenActs';

/** Assignments that are under way, said on the page of the jobs. */
export const TakenNotices = ({ desk }: { readonly desk: Desk }) => {
  const { classDoor: words } = wordsOf(desk);
  const taken = useSignal(desk.classes.taken);
  return (
    <>
      {taken.map(({ assignment: { id, label = '' } }) => (
        <p class="lead going" key={id}>
          <button type="button" class="btn" data-taken={id} onClick={() => openTaken(desk, id)}>
            {words.notice(label === '' ? words.unnamed : label)}
          </button>
        </p>
      ))}
    </>
  );
};

/** The ways in at the foot of the jobs: a file that a learner got, and the instructor's desk. */
export const ClassLinks = ({ desk }: { readonly desk: Desk }) => {
  const { classDoor: words } = wordsOf(desk);
  const open = async ([file]: readonly File[]): Promise<void> => {
    if (file) await takeOn(desk, readAssignment(await file.text()), file.name);
  };
  return (
    <p class="lead going ways">
      <FilePick id="openAssignment" text={words.openFile} take={(files) => void open(files)} link />
      <button type="button" class="link" id="class" onClick={() => (desk.screen.value = 'class')}>
        {words.title}
      </button>
    </p>
  );
};
