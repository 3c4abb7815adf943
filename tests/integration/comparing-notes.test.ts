import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { todayIn } from '@/lib/platform/clock';
import { startTalk } from '@/lib/usecases/board/start-thread';
import { readThread } from '@/lib/usecases/board/read-thread';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { logHarvest } from '@/lib/usecases/harvest/keep-harvests';
import { readResults } from '@/lib/usecases/notes/read-results';
import { readSharing } from '@/lib/usecases/notes/read-sharing';
import { saySharing } from '@/lib/usecases/notes/say-sharing';
import type { Caller } from '@/lib/usecases/operation';
import { changeHolders, endTenancy, letPlot } from '@/lib/usecases/plots/keep-tenancies';
import { NotFound } from '@/lib/usecases/refusal';
import { done, makeBed, makeMember, makePlot, makeSociety, once, type TestSociety } from '../fixtures/society';

const today = todayIn('Europe/London');
/** A season that is over. */
const season = Number(today.slice(0, 4)) - 1;

type Grown = { dug?: 'double-digging' | 'single-digging'; cleared?: string; now?: true };

/** Somebody with a bed of 12 m² of onions, lifted and weighed. */
async function grower(society: TestSociety, nth: number, given: Grown = {}) {
  const { dug, cleared = 'yes', now } = given;
  const [when, sown, onDay] = now ? [season + 1, '', today] : [season, `${season}-03-05`, `${season}-08-20`];
  const member = await makeMember(society, { name: `Grower ${nth}` });
  const plot = await makePlot(society, `Plot number ${nth}`, [member.id]);
  const bed = await makeBed(society, plot);
  const onions = { bedId: bed.id, cropKey: 'onion', season: String(when), variety: 'Secret Globe', sownOn: sown };
  const { plantingId } = await done(recordPlanting.run(member.caller, once(onions)));
  const lifted = { plantingId, measure: 'grams', amount: `${12 + nth * 6} kg`, onDay, quality: 'good', cleared };
  await done(logHarvest.run(member.caller, once({ ...lifted, notes: 'secret notes' })));
  if (dug)
    await db().groundWork.create({
      data: {
        ...{ societyId: society.id, frameId: plot.frameId, holdingId: plot.holdingId, ...bed.footprint },
        ...{ season, kind: 'dug', method: dug, depthCm: 50 },
      },
    });
  const say = (shares: 'yes' | 'no', caller = member.caller) =>
    done(saySharing.run(caller, once({ holdingId: plot.holdingId, shares })));
  return { ...member, ...plot, bedId: bed.id, say };
}

const asked = { crop: 'onion', season: String(season), by: 'digging' };
const resultsFor = async (caller: Caller, given: object = {}) =>
  (await readResults.run(caller, { ...asked, ...given })).results;
const valuesFor = async (caller: Caller, given: object = {}) =>
  (await resultsFor(caller, given))?.compared.groups.map(({ key, values }) => [key, values]);

describe('neighbours’ beds', () => {
  let society: TestSociety;
  let growers: Awaited<ReturnType<typeof grower>>[];
  let reader: Caller;

  beforeAll(async () => {
    society = await makeSociety();
    reader = (await makeMember(society)).caller;
    growers = [];
    for (const nth of [0, 1, 2, 3, 4, 5, 6])
      growers.push(await grower(society, nth, { dug: nth < 4 ? 'double-digging' : 'single-digging' }));
  });

  it('are told to nobody while fewer than three have agreed', async () => {
    expect(await readResults.run(reader, {})).toMatchObject({ crops: [], results: null });
    for (const { say } of growers.slice(0, 2)) await say('yes');
    expect((await readResults.run(reader, {})).crops).toEqual([]);
    const results = await resultsFor(reader);
    expect(results).toMatchObject({ seasons: [], compared: { groups: [], contrasts: [], apart: { values: [] } } });
    expect(JSON.stringify(results)).not.toContain('ecret');
  });

  it('are told by their treatment once three in a group have, by size, without a name, a number or notes', async () => {
    for (const { say } of growers.slice(2)) await say('yes');
    expect(await valuesFor(reader)).toEqual([
      ['double', [1_000, 1_500, 2_000, 2_500]],
      ['not-double', [3_000, 3_500, 4_000]],
    ]);
    // The secretary is told no more than anybody.
    expect(await resultsFor(society.secretary.caller)).toEqual(await resultsFor(reader));
    const { crops, results } = await readResults.run(reader, asked);
    expect(crops).toEqual([{ key: 'onion', name: 'Onion' }]);
    expect(results?.compared.contrasts).toMatchObject([{ by: 'groups', counts: [4, 3], verdict: 'likely-less' }]);
    const all = JSON.stringify(await Promise.all([resultsFor(reader), resultsFor(reader, { by: 'variety' })]));
    const named = growers.flatMap(({ id, holdingId, plotId, bedId }) => [id, holdingId, plotId, bedId]);
    for (const word of ['Grower', 'Plot number', 'notes', ...named]) expect(all).not.toContain(word);
  });

  it('stand beside one’s own, which is named to oneself and counts for none of the three', async () => {
    const [first, , , , fifth] = growers;
    const mine = await resultsFor(first?.caller ?? reader);
    expect(mine?.own).toMatchObject([{ bedName: '1', plotNumber: 'Plot number 0', gPerM2: 1_000, group: 'double' }]);
    expect(mine?.compared.groups).toMatchObject([
      { key: 'double', values: [1_000, 1_500, 2_000, 2_500], own: [1_000] },
      { key: 'not-double', own: [] },
    ]);
    // Of the fifth grower's group two neighbours are left: whoever knows their own and the total would know those, so the groups stand together.
    expect(await resultsFor(fifth?.caller ?? reader)).toMatchObject({
      own: [{ gPerM2: 3_000 }],
      compared: { groups: [], apart: { values: { length: 7 }, own: [3_000] } },
    });
  });

  it('are gone from the next page on when somebody takes it back, and all that would give them away', async () => {
    const [, , , , , , last] = growers;
    await last?.say('no');
    expect(await valuesFor(reader)).toEqual([]);
    expect((await resultsFor(reader))?.compared.apart.values).toEqual([1_000, 1_500, 2_000, 2_500, 3_000, 3_500]);
    expect(await resultsFor(last?.caller ?? reader)).toMatchObject({ own: [{ gPerM2: 4_000, isShared: false }] });
    await last?.say('yes');
    expect(await valuesFor(reader)).toHaveLength(2);
    const book = await db().auditRow.findMany({
      where: { societyId: society.id, thing: 'result sharing', thingId: last?.holdingId ?? '' },
      orderBy: { at: 'asc' },
    });
    expect(book.map(({ verb, before, after }) => [verb, before, after])).toEqual([
      ['agreed', { shares: null }, { shares: true }],
      ['withdrew', { shares: true }, { shares: false }],
      ['agreed', { shares: false }, { shares: true }],
    ]);
  });

  it('are of this society alone', async () => {
    const other = await makeSociety();
    const stranger = await makeMember(other);
    expect(await readResults.run(stranger.caller, asked)).toMatchObject({
      crops: [],
      results: { own: [], seasons: [], compared: { groups: [] } },
    });
    await expect(readResults.run({ ...stranger.caller, slug: society.slug }, asked)).rejects.toThrow(NotFound);
    await expect(
      saySharing.run(stranger.caller, once({ holdingId: growers[0]?.holdingId, shares: 'yes' })),
    ).rejects.toThrow(NotFound);
  });

  it('stand in a talk as they are now, by the address of their page', async () => {
    const body = `Look at /${society.slug}/board/results?crop=onion&season=${season}&by=digging.`;
    const { threadId } = await done(startTalk.run(reader, once({ title: 'Small onions', topic: 'crop:onion', body })));
    const state = async () => (await readThread.run(reader, { threadId })).named;
    const key = `crop=onion&season=${season}&by=digging`;
    expect(await state()).toMatchObject([{ kind: 'results', key, plots: 7, verdicts: ['likely-less'] }]);
    await growers[0]?.say('no');
    await growers[1]?.say('no');
    expect(await state()).toMatchObject([{ plots: 0, verdicts: [] }]);
    for (const nth of [0, 1]) await growers[nth]?.say('yes');
  });
});

describe('who agrees', () => {
  it('is a holder and nobody for them; any may take it back, and whoever takes the ground over is asked anew', async () => {
    const society = await makeSociety();
    const { caller: secretary } = society.secretary;
    const one = await grower(society, 1);
    const other = await makeMember(society, { name: 'The other holder' });
    const from = today;
    const both = { holdingId: one.holdingId, memberIds: [one.id, other.id], from };
    await done(changeHolders.run(secretary, once(both)));
    const isShared = async (caller = one.caller) => (await readSharing.run(caller, {})).holdings[0]?.isShared;
    expect(await isShared()).toBe(false);
    await expect(one.say('yes', secretary)).rejects.toThrow(NotFound);
    await one.say('yes');
    expect(await isShared(other.caller)).toBe(true);
    await one.say('no', other.caller);
    expect(await isShared()).toBe(false);
    // Said again, it is said once.
    await one.say('no', other.caller);
    expect(await db().resultSharing.count({ where: { holdingId: one.holdingId } })).toBe(2);
    await one.say('yes', other.caller);
    const next = await makeMember(society, { name: 'Who comes next' });
    await done(endTenancy.run(secretary, once({ plotId: one.plotId, from, sure: 'yes' })));
    await done(letPlot.run(secretary, once({ plotId: one.plotId, memberIds: [next.id], from })));
    expect(await isShared(next.caller)).toBe(false);
    expect((await readSharing.run(one.caller, {})).holdings).toEqual([]);
  });
});

describe('what is left out', () => {
  it('is counted for three neighbours or more, and for fewer not', async () => {
    const society = await makeSociety();
    const reader = (await makeMember(society)).caller;
    const here = { season: String(season + 1), by: 'season' };
    const leftOut = async () => (await resultsFor(reader, here))?.leftOut;
    const grown = [];
    for (const nth of [0, 1, 2, 3, 4, 5])
      grown.push(await grower(society, nth, { now: true, cleared: nth < 3 ? 'yes' : '' }));
    for (const { say } of grown.slice(0, 5)) await say('yes');
    expect((await resultsFor(reader, here))?.compared.groups[0]?.values).toEqual([1_000, 1_500, 2_000]);
    expect(await leftOut()).toEqual({ standing: null, counted: null });
    await grown[5]?.say('yes');
    expect(await leftOut()).toEqual({ standing: 3, counted: null });
  });
});
