import { hands } from '../../src/core/hands/play';
import { balanceOf } from '../site/balanced';
import { levelOf } from '../site/levels';

/** `npx tsx tests/prove/balance.ts [ATTEMPTS]`: vertical balance at every step of so many attempts, over levels and hands. */

const attempts = Number(process.argv[2] ?? 1000);
const ids = ['garden-hut', 'boathouse', 'hay-barn'] as const;
const players = hands.map(({ name }) => name).filter((name) => name !== 'idle');
let frames = 0;
let worst = 0;
for (let i = 0; i < attempts; i++) {
  const [id, hand] = [ids[i % ids.length], players[Math.floor(i / ids.length) % players.length]];
  if (id === undefined || hand === undefined) continue;
  const found = balanceOf(levelOf(id), hand, 5000 + i);
  frames += found.frames;
  worst = Math.max(worst, found.worst);
}
console.log(JSON.stringify({ attempts, frames, worst }));
process.exitCode = worst < 1e-9 ? 0 : 1;
