import { verbs } from './verbs';

/** The headless door: one verb, its arguments, JSON on stdout, messages on stderr, an exit code that scripts can trust. */
const main = async (): Promise<number> => {
  const [verb = '', ...args] = process.argv.slice(2);
  const found = Object.hasOwn(verbs, verb) ? verbs[verb] : undefined;
  if (!found) {
    const what = verb === '' ? 'no verb given' : `${verb} is not a verb`;
    process.stderr.write(`tt: ${what} (${Object.keys(verbs).join(', ')})\n`);
    return 2;
  }
  const run = await found();
  return run(args);
};

/** Whatever goes wrong is one line, never a trace. */
const failed = (error: unknown): void => {
  const text = error instanceof Error ? error.message : String(error);
  process.stderr.write(`tt: ${text.replace(/\s+/g, ' ')}\n`);
  process.exitCode = 2;
};

// A reader that has seen enough, such as head, closes the pipe: that is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') failed(error);
});

main().then((code) => {
  process.exitCode = code;
}, failed);
