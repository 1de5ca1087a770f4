import type { Desk } from '../desk';
import { classWordsOf } from './classWords';

/** How to assign and how to read a report, short. */
export const HelpPage = ({ desk }: { readonly desk: Desk }) => {
  const { help, notice11 } = classWordsOf(desk).classes;
  return (
    <div class="sheets">
      {[help.assign, help.read].map(({ title, steps }) => (
        <section class="paper sheetOf" key={title}>
          <h2>{title}</h2>
          <ol class="steps">
            {steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          {title === help.read.title && <p class="first">{notice11}</p>}
        </section>
      ))}
    </div>
  );
};
