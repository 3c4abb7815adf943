import { expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addBeds } from '@/lib/usecases/ground/keep-beds';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { readWeek } from '@/lib/usecases/week/read-week';
import { done, makeBed, makeMember, makePlot, makeSociety, once } from '../fixtures/society';

it('tells each holder what the other changed: all of it on their week, and one mail a day', async () => {
  const society = await makeSociety();
  const [first, second] = [await makeMember(society, { name: 'First' }), await makeMember(society, { name: 'Second' })];
  const neighbour = await makeMember(society);
  const plot = await makePlot(society, 'T1', [first.id, second.id]);
  await makePlot(society, 'T2', [neighbour.id]);
  const bed = await makeBed(society, plot);
  const mailsTo = async ({ id }: { id: string }) => {
    const { email } = await db().member.findUniqueOrThrow({ where: { id } });
    return db().mailMessage.count({ where: { toAddress: email ?? '' } });
  };
  await done(recordPlanting.run(first.caller, once({ bedId: bed.id, cropKey: 'leek', season: '2025' })));
  const another = { plotId: plot.plotId, name: 'new', count: '1', width: '1 m', length: '1 m', x: '1 m', y: '18 m' };
  await done(addBeds.run(first.caller, once(another)));
  expect([await mailsTo(first), await mailsTo(second), await mailsTo(neighbour)]).toEqual([0, 1, 0]);

  const lately = async (who: typeof first) =>
    (await readWeek.run(who.caller, {})).lately.map(({ by, verb, what, bed, season }) => ({
      by,
      verb,
      what,
      bed,
      season,
    }));
  expect(await lately(second)).toEqual([
    { by: 'First', verb: 'added', what: 'bed new', bed: null, season: null },
    { by: 'First', verb: 'recorded', what: 'Leek', bed: '1', season: 2025 },
  ]);
  expect(await lately(first)).toEqual([]);
  expect(await lately(neighbour)).toEqual([]);

  // The secretary acts for them: both are told.
  await done(recordPlanting.run(society.secretary.caller, once({ bedId: bed.id, cropKey: 'kale', season: '2024' })));
  expect([await mailsTo(first), await mailsTo(second)]).toEqual([1, 2]);
  expect(await lately(first)).toMatchObject([{ by: 'The secretary', what: 'Kale' }]);
});
