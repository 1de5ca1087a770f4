import { describe, expect, it } from 'vitest';
import { modelOf } from '../../src/present/model/solidsOf';
import { shownOf } from '../../src/present/model/scheme';
import { framed } from '../../src/present/framed';
import { pose } from '../../src/core/site/posed';
import { wordsOn } from '../../src/present/words/jobWords';
import { memberName } from '../../src/present/words/names';
import { trueJobOn, smallBeam } from '../site/beams';
import { levelOf } from '../site/levels';

/** A beam's posts stay, and are neither called nor drawn as props. */

const beam = trueJobOn(smallBeam);
const hut = levelOf('garden-hut');

describe('words of a job on a ridge beam', () => {
  it('call its posts otherwise than props, where the two differ', () => {
    const [props, posts] = [wordsOn('es', hut), wordsOn('es', beam)];
    const said = (words: typeof props): readonly string[] => [
      memberName(words, 'post.1'),
      words.tasks.setPosts,
      words.trade.method.hang.posts,
      words.ui.act.post,
      words.ui.act.place.posts,
      words.spoken.roof.posts,
      words.spoken.roof.heldBy.posts,
      words.rules['S2']?.why ?? '',
      words.dangers['raiseUnderLoad'] ?? '',
      words.dangers['propWithSomeoneUnder'] ?? '',
      words.refusals['ridgeInTheWay'] ?? '',
    ];
    for (const one of said(props)) expect(one).toMatch(/puntal/i);
    for (const one of said(posts)) expect(one).toMatch(/poste/i);
  });
});

describe('the model of a roof on a ridge beam', () => {
  const attempt = framed(beam);
  const { solids } = modelOf(shownOf(beam, pose(attempt), attempt.site));
  const zs = (id: string): readonly number[] =>
    solids
      .filter((solid) => solid.id === id && solid.material === 'lumber')
      .flatMap(({ faces }) => faces.flatMap(({ points }) => points.map(([, , z]) => z)));

  it('has every post of the plan, from under the ridge down past the plates', () => {
    const under = Math.min(...zs('ridge'));
    for (const id of ['post.1', 'post.2', 'post.3']) {
      expect(Math.max(...zs(id))).toBeCloseTo(under, 6);
      expect(Math.min(...zs(id))).toBeLessThan(-50);
    }
  });

  it('has no ties that the plan leaves out', () => {
    expect(solids.filter(({ role }) => role === 'tie' || role === 'collar')).toEqual([]);
  });
});
