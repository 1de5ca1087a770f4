import { rulesVersion } from '../core/order/version';
import type { Proof, ProofLine } from '../core/score/proof';
import { claimsOf, targetName, type Claim } from '../present/claims';
import type { Messages } from '../present/words/messages';
import { wordsOf, type Desk } from './desk';
import { LanguageButton } from './topBar';
import { useSignal } from './useSignal';

/** What the score claims, the figures for it so far, and what nobody has shown yet. */
export const ProofScreen = ({ desk }: { readonly desk: Desk }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const { proof: names } = words;
  const proof = useSignal(desk.proof);
  return (
    <div class="page">
      <header>
        <button
          type="button"
          class="btn small"
          id="proofBack"
          onClick={() => (desk.screen.value = desk.back.value)}
        >
          ‹ {names.back}
        </button>
        <span class="grow" />
        <LanguageButton desk={desk} />
      </header>
      <main class="proof">
        <h1>{names.title}</h1>
        <p class="lead">{names.lead}</p>
        <p class="lead">
          {!proof
            ? names.none
            : proof.rules === rulesVersion
              ? names.made(proof.rules, proof.runs)
              : names.older(proof.rules)}
        </p>
        <section class="paper">
          <h2>{names.missing}</h2>
          <ul>
            {names.missingRows.map((row) => (
              <li key={row}>{row}</li>
            ))}
          </ul>
        </section>
        {proof && <Claims desk={desk} words={words} proof={proof} />}
      </main>
    </div>
  );
};

type ClaimsProps = { readonly desk: Desk; readonly words: Messages; readonly proof: Proof };

const Claims = ({ desk, words, proof }: ClaimsProps) => {
  const { lang } = desk.settings.value;
  const jobName = (level: string): string =>
    level
      .split(', ')
      .map((id) => desk.levels.find((one) => one.id === id)?.title[lang] ?? id)
      .join(', ');
  return (
    <>
      {claimsOf(proof)
        .filter(({ inFull, others }) => inFull.length + others.length > 0)
        .map((claim) => (
          <ClaimSheet words={words} claim={claim} jobName={jobName} key={claim.id} />
        ))}
      <section class="paper">
        {proof.levels.map(({ level, errorOfOneRun }) =>
          errorOfOneRun === null ? null : (
            <p key={level}>{words.proof.error(jobName(level), errorOfOneRun.toFixed(1))}</p>
          ),
        )}
      </section>
    </>
  );
};

type SheetProps = {
  readonly words: Messages;
  readonly claim: Claim;
  readonly jobName: (level: string) => string;
};

/** The jobs proved in full stand open; the others are there to be opened. */
const ClaimSheet = ({ words, claim: { id, inFull, others }, jobName }: SheetProps) => {
  const { proof } = words;
  const all = [...inFull, ...others];
  const reached = all.filter((line) => line.reached).length;
  return (
    <section class="paper">
      <h2>{proof.claims[id]}</h2>
      <p class="dim">{proof.reachedOf(reached, all.length)}</p>
      {reached < all.length && proof.whyNot[id] && <p>{proof.whyNot[id]}</p>}
      <Figures words={words} lines={inFull} jobName={jobName} />
      {others.length > 0 && (
        <details>
          <summary>{proof.others}</summary>
          <Figures words={words} lines={others} jobName={jobName} />
        </details>
      )}
    </section>
  );
};

type FiguresProps = {
  readonly words: Messages;
  readonly lines: readonly ProofLine[];
  readonly jobName: (level: string) => string;
};

const Figures = ({ words, lines, jobName }: FiguresProps) => {
  const { columns, yes, no } = words.proof;
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{columns.what}</th>
          <th scope="col">{columns.job}</th>
          <th scope="col">{columns.value}</th>
          <th scope="col">{columns.wanted}</th>
          <th scope="col">{columns.n}</th>
          <th scope="col">{columns.reached}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ target, level, value, wanted, n, reached }) => (
          <tr key={`${target} ${level}`} class={reached ? '' : 'missed'}>
            <th scope="row">{targetName(words, target)}</th>
            <td data-name={columns.job}>{jobName(level)}</td>
            <td data-name={columns.value} class="tn">
              {Math.round(value * 1000) / 1000}
            </td>
            <td data-name={columns.wanted} class="tn">
              {wanted}
            </td>
            <td data-name={columns.n} class="tn">
              {n}
            </td>
            <td data-name={columns.reached}>{reached ? yes : no}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
