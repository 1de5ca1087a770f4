import fc from 'fast-check';

/** What properties are tried with. A commit passes or fails the same for everybody; `DRAWS=12` tries others, `DRAWS=new` new ones each time. */
const draws = process.env['DRAWS'];

if (draws !== 'new') fc.configureGlobal({ seed: Number(draws ?? 20261129) });
