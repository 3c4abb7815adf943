import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { joinBeds, retireBed, splitBed } from '@/lib/usecases/ground/keep-beds';
import { saveCrop } from '@/lib/usecases/ground/keep-crops';
import { recordPlanting, retirePlanting } from '@/lib/usecases/ground/keep-plantings';
import { recordTrouble, retireTrouble } from '@/lib/usecases/ground/keep-troubles';
import { halvePlot, joinPlots } from '@/lib/usecases/plots/halve-and-join';
import { changeSetting } from '@/lib/usecases/settings/settings';
import { readRotation } from '@/lib/usecases/site/read-rotation';
import { readSite } from '@/lib/usecases/site/read-site';
import { todayIn } from '@/lib/platform/clock';
import { done, makeBed, makeMember, makePlot, makeSociety, once, type TestMember } from '../fixtures/society';

let society: Awaited<ReturnType<typeof makeSociety>>;
let holder: TestMember;
let plot: Awaited<ReturnType<typeof makePlot>>;
let bed: Awaited<ReturnType<typeof makeBed>>;
const today = todayIn('Europe/London');
const season = Number(today.slice(0, 4));

beforeAll(async () => {
  society = await makeSociety();
  holder = await makeMember(society);
  plot = await makePlot(society, '1', [holder.id]);
  bed = await makeBed(society, plot);
  await makeBed(society, plot, 3);
  await makePlot(society, '2', []);
});

const ask = () => readRotation.run(society.secretary.caller, { season: String(season + 1) });

/** What is answered from what was kept, and what is answered with nothing kept at all. */
async function keptAndFresh() {
  const kept = [await ask(), await readSite.run(society.secretary.caller, {})];
  await db().keptTally.deleteMany({ where: { societyId: society.id } });
  return { kept, fresh: [await ask(), await readSite.run(society.secretary.caller, {})] };
}

const plantNext = (bedId: string, cropKey: string, year: number) =>
  recordPlanting.run(society.secretary.caller, once({ bedId, cropKey, season: String(year) }));

describe('tallies that are kept', () => {
  it('are worked out once, and not again while nothing changes', async () => {
    await ask();
    const before = await db().keptTally.findMany({ where: { societyId: society.id }, orderBy: { season: 'asc' } });
    expect(before.length).toBeGreaterThan(8);
    // A mark that only working out again would remove.
    await db().keptTally.updateMany({ where: { societyId: society.id }, data: { tally: emptyTally } });
    const read = await ask();
    expect(read.site && Object.values(read.total)).toEqual([0, 0, 0, 0, 0]);
    await db().keptTally.deleteMany({ where: { societyId: society.id } });
    const again = await ask();
    expect(again.site && again.total.notKnownCm2).toBeGreaterThan(0);
  });

  it('never answer otherwise than the ground does, whatever was written to it', async () => {
    const { plantingId } = await done(plantNext(bed.id, 'onion', season));
    const changes: (() => Promise<unknown>)[] = [
      () => done(plantNext(bed.id, 'leek', season + 1)),
      () => done(retirePlanting.run(holder.caller, once({ plantingId }))),
      () => done(plantNext(bed.id, 'kale', season)),
      () =>
        done(
          recordTrouble.run(
            holder.caller,
            once({ bedId: bed.id, troubleKey: 'white-rot', certainty: 'sure', foundOn: today }),
          ),
        ),
      async () => {
        const trouble = await db().trouble.findFirstOrThrow({ where: { societyId: society.id } });
        await done(retireTrouble.run(holder.caller, once({ troubleId: trouble.id, sure: 'yes' })));
      },
      () =>
        done(changeSetting.run(society.secretary.caller, once({ key: 'break.brassica-kin', value: '9', from: today }))),
      () =>
        done(
          saveCrop.run(
            society.secretary.caller,
            once({
              key: 'kale',
              name: 'Kale',
              family: 'Brassicaceae',
              cropGroup: 'leaves',
              hostGroup: 'beet-kin',
              life: 'annual',
            }),
          ),
        ),
      () =>
        done(
          splitBed.run(
            holder.caller,
            once({ bedId: bed.id, across: 'length', at: '1 m', firstName: '1', secondName: '1a', from: today }),
          ),
        ),
      async () => {
        const [one, other] = await bedsNow();
        await done(joinBeds.run(holder.caller, once({ bedId: one?.id, otherId: other?.id, name: '1', from: today })));
      },
      () =>
        done(
          halvePlot.run(
            society.secretary.caller,
            once({
              plotId: plot.plotId,
              across: 'length',
              at: '6 m',
              firstNumber: '1A',
              secondNumber: '1B',
              from: today,
            }),
          ),
        ),
      async () => {
        const [one, other] = await db().plot.findMany({ where: { number: { in: ['1A', '1B'] }, retiredOn: null } });
        await done(
          joinPlots.run(
            society.secretary.caller,
            once({ plotId: one?.id, otherId: other?.id, number: '1', from: addDays(today, 1) }),
          ),
        );
      },
      async () => done(retireBed.run(society.secretary.caller, once({ bedId: (await bedsNow())[0]?.id, from: today }))),
    ];
    const seen = new Set<string>();
    for (const change of changes) {
      await ask();
      await change();
      const { kept, fresh } = await keptAndFresh();
      expect(kept).toEqual(fresh);
      seen.add(JSON.stringify(fresh));
    }
    // The changes are ones that show: most of them move the figures.
    expect(seen.size).toBeGreaterThan(changes.length / 2);
  });

  it('of plots joined from two frames follow a plot that is no more, and a bed that goes', async () => {
    const first = await makePlot(society, 'F1', [holder.id]);
    const second = await makePlot(society, 'F2', [holder.id]);
    const far = await makeBed(society, second);
    // As joining leaves it: the bed is of the first plot, and its ground of the second's frame.
    await db().bed.update({ where: { id: far.id }, data: { plotId: first.plotId } });
    await ask();
    await db().bed.update({ where: { id: far.id }, data: { retiredOn: new Date(`${season}-01-02`) } });
    const gone = await keptAndFresh();
    expect(gone.kept).toEqual(gone.fresh);
    await db().bed.update({ where: { id: far.id }, data: { retiredOn: null } });
    await ask();
    await db().plot.update({ where: { id: first.plotId }, data: { retiredOn: new Date(`${season}-01-02`) } });
    const ended = await keptAndFresh();
    expect(ended.kept).toEqual(ended.fresh);
  });

  it('are taken by nobody where the ground has changed since they were begun', async () => {
    await ask();
    const [tally] = await db().keptTally.findMany({ where: { frameId: plot.frameId, season } });
    const beds = await bedsNow();
    await done(plantNext(beds[0]?.id ?? '', 'carrot', season));
    // A slow process keeps, only now, what it worked out before that.
    await db().keptTally.update({
      where: { frameId_season: { frameId: plot.frameId, season } },
      data: { tally: emptyTally, revision: tally?.revision ?? 0n },
    });
    const { kept, fresh } = await keptAndFresh();
    expect(kept).toEqual(fresh);
  });
});

const emptyTally = { byPlot: [], byGroup: [], byTrouble: [], short: [] };

function bedsNow() {
  return db().bed.findMany({ where: { frameId: plot.frameId, retiredOn: null }, orderBy: { yCm: 'asc' } });
}
