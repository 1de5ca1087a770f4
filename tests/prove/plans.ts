import fc from 'fast-check';
import { tryRoof, wildRoof } from '../roof/wildRoofs';

/** `tsx tests/prove/plans.ts [COUNT]`: so many roof files of every kind, wild ones among them; none may crash or give a number that is none. */
const count = Number(process.argv[2] ?? 100_000);
let figured = 0;
fc.assert(
  fc.property(wildRoof, (file) => {
    const { figured: yes, wrong } = tryRoof(file);
    figured += yes ? 1 : 0;
    if (wrong.length > 0) throw new Error(wrong.join('; '));
  }),
  { numRuns: count, endOnFailure: true },
);
console.log(`${count} files: ${figured} figured, ${count - figured} refused in words, 0 wrong`);
