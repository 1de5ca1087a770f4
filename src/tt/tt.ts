import { verbs } from './verbs';

/** The headless door: one verb, its arguments, JSON on stdout, messages on stderr, an exit code that scripts can trust. */
const main = async (): Promise<number> => {
  const [verb = '', ...args] = process.argv.slice(2);
  const found = verbs[verb];
  if (!found) {
    process.stderr.write(
      `tt: ${verb === '' ? 'no verb given' : `${verb} is not a verb`} (${Object.keys(verbs).join(', ')})\n`,
    );
    return 2;
  }
  const run = await found();
  return run(args);
};

main().then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    process.stderr.write(`tt: ${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 2;
  },
);
