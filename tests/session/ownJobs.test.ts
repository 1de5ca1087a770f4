import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { fileOf, type RoofDraft } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { cautionIds } from '../../src/content/levelSchema';
import { ownJob } from '../../src/content/ownJob';
import { opened } from '../../src/core/hands/opened';
import { play } from '../../src/core/hands/play';
import { scoreOf, toStandard } from '../../src/core/score/scored';
import { dropOwnJob, keepOwnJob, levelOf, loadOwnJobs } from '../../src/session/ownJobs';
import { idbStore } from '../../src/session/idbStore';
import { parOf } from '../../src/session/provedJob';
import { memoryStore } from '../../src/session/store';
import { siteDigest } from '../../src/content/canonical';
import { english } from '../content/english';

const fileWith = (typed: RoofDraft['typed']): unknown => {
  const draft = sampleOf('gable');
  return fileOf({ ...draft, typed: { ...draft.typed, ...typed } });
};
const hut = { span: "12'", length: "8'" };
const whyNot = (typed: RoofDraft['typed']): string => {
  const read = ownJob(fileWith(typed));
  return read.ok ? '' : read.complaints.map(({ path, wrong }) => `${path} ${english(wrong)}`).join('; ');
};

describe('a job on an own roof', () => {
  it('is offered in the ways that the expert framed it, and it frames it on other seeds', () => {
    const told: number[] = [];
    const par = parOf(fileWith(hut), (share) => told.push(share));
    if (!par.ok) throw new Error(JSON.stringify(par.complaints));
    expect(told).toEqual([...told].sort((a, b) => a - b));
    const level = levelOf({ file: fileWith(hut), par: par.value });
    expect(level?.methods.hang).toEqual(Object.keys(par.value));
    for (const seed of [2, 3, 4]) {
      const attempt = play(level!, 'expert', { seed, mode: 'own' });
      expect(toStandard(scoreOf(attempt)), `seed ${seed}`).toBe(true);
    }
  });

  it('has more of what likely goes wrong there', () => {
    const spread = (trouble: string): number => {
      const read = ownJob(fileWith({ ...hut, 'site.trouble': trouble }));
      if (!read.ok) throw new Error('refused');
      const { ranges, dried, planted } = read.value.asFound;
      return Object.values(ranges).reduce((sum, range) => sum + range, dried * 10) + planted.length / 100;
    };
    for (const trouble of ['grown', 'walls', 'bowed', 'dried', 'mixed'])
      expect(spread(trouble)).toBeGreaterThan(spread('none'));
  });

  it('warns of hanging loads where a machine comes, and of everything else anyway', () => {
    const warned = (machine: string): readonly string[] => {
      const read = ownJob(fileWith({ ...hut, 'site.machine': machine }));
      return read.ok ? read.value.cautions : [];
    };
    const ofMachines = ['load', 'signals', 'powerLines'];
    expect(warned('yes')).toEqual([...cautionIds]);
    expect(warned('no')).toEqual(cautionIds.filter((id) => !ofMachines.includes(id)));
  });

  it('is the same job for the same roof, on any device and after it was kept', async () => {
    const file = fileWith(hut);
    const again = JSON.parse(JSON.stringify(file)) as unknown;
    const [a, b] = [levelOf({ file, par: { posts: 370 } }), levelOf({ file: again, par: { posts: 370 } })];
    expect(a).toEqual(b);
    expect(siteDigest(opened(a!, 5, 'own').site)).toBe(siteDigest(opened(b!, 5, 'own').site));
    const store = memoryStore();
    await keepOwnJob(store, { file, par: { posts: 370 } });
    await keepOwnJob(store, { file: again, par: { posts: 370 } });
    expect((await loadOwnJobs(store)).map(levelOf)).toEqual([a]);
    await store.put('own jobs', [{ file: 'x', par: 1 }, null, 7]);
    expect(await loadOwnJobs(store)).toEqual([]);
  });

  it('leaves the list alone, whatever two tabs keep or leave off at the same time', async () => {
    const [store, other] = [await idbStore(), await idbStore()];
    const jobs = ["8'", "10'", "12'", "14'"].map((length) => ({
      file: fileWith({ ...hut, length }),
      par: { posts: 370 },
    }));
    await Promise.all(jobs.map((job, i) => keepOwnJob(i % 2 ? store : other, job)));
    const ids = (await loadOwnJobs(store)).map((job) => levelOf(job)!.id);
    expect(new Set(ids).size).toBe(4);
    await Promise.all([dropOwnJob(store, ids[0]!), dropOwnJob(other, ids[2]!)]);
    expect((await loadOwnJobs(store)).map((job) => levelOf(job)!.id)).toEqual([ids[1], ids[3]]);
  });

  it('is not offered on a roof that the site knows nothing of, is too long, or leaves its walls untied', () => {
    const hip = ownJob(fileOf(sampleOf('hip')));
    expect(hip.ok).toBe(false);
    expect(whyNot({ length: "200'" })).toContain('roof.length makes 101 pairs');
    expect(whyNot({ joists: 'none' })).toContain('untied');
    expect(whyNot({})).toBe('');
  });

  it('offers no Check-off: nobody has proved what a pass on it would be worth', () => {
    const read = ownJob(fileWith(hut));
    expect(read.ok && read.value.modes).not.toContain('check-off');
  });
});
