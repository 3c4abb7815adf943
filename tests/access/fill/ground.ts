import { db } from '@/lib/data/db';
import { todayIn } from '@/lib/platform/clock';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { makeSheet } from '@/lib/usecases/sheets/make-sheet';
import { tickTrench } from '@/lib/usecases/sheets/tick-trench';
import { done, makePlot, once, type TestMember } from '../../fixtures/society';
import type { Made, Members, Word } from './members';

type Plot = Awaited<ReturnType<typeof makePlot>>;
export type Ground = Awaited<ReturnType<typeof makeGround>>;

export function thisYear(): number {
  return Number(todayIn('Europe/London').slice(0, 4));
}

/** The holder's plot with two beds that touch, a spare plot beside it, and the neighbour's beyond. */
export async function makeGround(society: Made, word: Word, { holder, neighbour, former }: Members) {
  const plot = await makePlot(society, word('A'), [holder.id]);
  const spare = await makePlot(society, word('B'), []);
  const other = await makePlot(society, word('C'), [neighbour.id]);
  await db().frame.update({ where: { id: spare.frameId }, data: { originXCm: 800 } });
  await db().frame.update({ where: { id: other.frameId }, data: { originXCm: 3000 } });
  const bedName = word('bed 1');
  const bedId = await makeBed(society, plot, bedName, 60);
  const nextBedId = await makeBed(society, plot, word('bed 2'), 260);
  const otherBedId = await makeBed(society, other, word('bed 3'), 60);
  await heldBefore(society, plot, bedId, word, former);
  const crop = await db().societyCrop.create({
    data: {
      societyId: society.id,
      key: word('crop key'),
      name: word('crop'),
      family: word('family'),
      cropGroup: 'roots',
      hostGroups: [],
      life: 'annual',
      takesManure: false,
    },
  });
  const record = ({ caller }: TestMember, bed: string, whose: string) =>
    done(
      recordPlanting.run(
        caller,
        once({
          bedId: bed,
          cropKey: crop.key,
          season: String(thisYear()),
          variety: word(`${whose} variety`),
          notes: word(`${whose} notes`),
        }),
      ),
    );
  const { plantingId } = await record(holder, bedId, 'holder');
  await record(neighbour, otherBedId, 'neighbour');
  const { id: workId } = await db().groundWork.create({
    data: {
      societyId: society.id,
      frameId: plot.frameId,
      xCm: 60,
      yCm: 60,
      widthCm: 600,
      lengthCm: 200,
      season: thisYear() - 2,
    },
  });
  const { sheetId } = await done(makeSheet.run(holder.caller, once({ bedId: nextBedId, group: 'alliums' })));
  await done(tickTrench.run(holder.caller, once({ sheetId, trench: '1' })));
  const troubleId = await createTrouble(society, plot, word('trouble notes'));
  const courses = await createCourses(society, plot, bedId);
  const ids = {
    ...courses,
    troubleId,
    plotId: plot.plotId,
    sparePlotId: spare.plotId,
    bedId,
    nextBedId,
    plantingId,
    workId,
    sheetId,
    bedName,
  };
  const others = { otherHoldingId: other.holdingId, otherBedId };
  return { ids: { ...ids, ...others, holdingId: plot.holdingId }, otherHoldingId: other.holdingId };
}

async function makeBed(society: Made, { plotId, frameId }: Plot, name: string, yCm: number): Promise<string> {
  const footprint = { xCm: 60, yCm, widthCm: 600, lengthCm: 200 };
  const data = { societyId: society.id, plotId, frameId, ...footprint, name, fromOn: new Date('2019-10-01') };
  return (await db().bed.create({ data, select: { id: true } })).id;
}

async function createCourses(society: Made, { holdingId }: Plot, bedId: string) {
  const by = await db().member.findFirstOrThrow({ where: { societyId: society.id } });
  const wishes = {
    options: [{ key: 'alliums', areaCm2: 0 }],
    keepOrder: false,
    evenTurns: false,
    bedIds: [bedId],
    cells: [],
  };
  const cost = { rules: 0, shortfall: 0, order: 0, turns: 0, moves: 0 };
  const found = { board: { [bedId]: ['alliums'] }, cost, gap: null, conflict: null, conflictKnown: true, seconds: 1 };
  const asked = {
    societyId: society.id,
    holdingId,
    askedByMemberId: by.id,
    firstSeason: thisYear() + 1,
    years: 1,
    wishes,
  };
  const create = async (data: object) =>
    (await db().course.create({ data: { ...asked, ...data }, select: { id: true } })).id;
  return { courseId: await create({ state: 'solved', found }), waitingCourseId: await create({ state: 'waiting' }) };
}

async function createTrouble(society: Made, { frameId, holdingId }: Plot, notes: string): Promise<string> {
  const footprint = { xCm: 60, yCm: 60, widthCm: 600, lengthCm: 50 };
  const what = { troubleKey: 'white-rot', certainty: 'likely', foundOn: new Date('2024-06-01'), notes };
  const by = await db().member.findFirstOrThrow({ where: { societyId: society.id } });
  const data = { societyId: society.id, frameId, holdingId, ...footprint, ...what, notedByMemberId: by.id };
  return (await db().trouble.create({ data, select: { id: true } })).id;
}

// Somebody held the plot before, and left notes on its ground.
async function heldBefore(society: Made, plot: Plot, bedId: string, word: Word, former: TestMember): Promise<void> {
  const taken = new Date('2022-01-01');
  const now = { societyId: society.id, holdingId: plot.holdingId };
  await db().tenancy.updateMany({ where: now, data: { fromOn: taken } });
  await db().holdingMember.updateMany({ where: now, data: { fromOn: taken } });
  const holding = await db().holding.create({ data: { societyId: society.id, endedOn: taken } });
  const until = { societyId: society.id, holdingId: holding.id, fromOn: new Date('2019-10-01'), untilOn: taken };
  await db().holdingMember.create({ data: { ...until, memberId: former.id } });
  await db().tenancy.create({ data: { ...until, plotId: plot.plotId } });
  await db().planting.create({
    data: {
      societyId: society.id,
      frameId: plot.frameId,
      bedId,
      holdingId: holding.id,
      cropKey: 'kale',
      variety: word('former variety'),
      notes: word('former notes'),
      xCm: 60,
      yCm: 60,
      widthCm: 600,
      lengthCm: 200,
      firstSeason: 2021,
      lastSeason: 2021,
    },
  });
}
