import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { splitBed } from '@/lib/usecases/ground/keep-beds';
import { readBed } from '@/lib/usecases/ground/read-ground';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { eraseMember, memberLeaves } from '@/lib/usecases/members/keep-members';
import { halvePlot, joinPlots } from '@/lib/usecases/plots/halve-and-join';
import { importPlots } from '@/lib/usecases/plots/import-plots';
import { drawPlot } from '@/lib/usecases/plots/keep-plots';
import { endTenancy, letPlot } from '@/lib/usecases/plots/keep-tenancies';
import { listPlots } from '@/lib/usecases/plots/read-plots';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestSociety,
} from '../fixtures/society';

let society: TestSociety;
const from = '2026-11-01';

beforeAll(async () => {
  society = await makeSociety();
});

describe('a list of plots and holders', () => {
  const take = (table: string) =>
    importPlots.run(society.secretary.caller, once({ siteId: society.siteId, table, from }));

  it('is taken in from what spreadsheets write: a byte-order mark, semicolons, formulas that stay text', async () => {
    const table =
      '\uFEFFplot;rods;holders;email\n"L1";10;"Ada Moss & Bo Moss";ada@example.org\nL2;2,5;=1+1;\nL3;5;Ada Moss;ada@example.org\n';
    expect(await done(take(table))).toMatchObject({ plots: 3, members: 3 });
    const { plots } = await listPlots.run(society.secretary.caller, {});
    expect(plots.find(({ number }) => number === 'L2')).toMatchObject({ quarterRods: 10, holders: '=1+1' });
  });

  it('is refused whole, with each bad cell named', async () => {
    const outcome = await take('plot,rods,email\nM1,0,\nM1,10,not an address\n,ten,\nL1,10,');
    expect(outcome.ok).toBe(false);
    const words = outcome.ok
      ? []
      : outcome.refusals.map((refusal) => ('words' in refusal ? refusal.words : refusal.code));
    expect(words).toContain('csv-faults');
    expect(words.join(' ')).toMatch(/Line 2, column “rods”/);
    expect(await db().plot.count({ where: { societyId: society.id, number: 'M1' } })).toBe(0);
  });

  it.each(['', 'nothing here', 'plot\n1', 'plot,rods\n"1,10'])('refuses %j', async (table) => {
    expect((await refusedWith(take(table))).length).toBeGreaterThan(0);
  });
});

describe('ground that changes hands and shape', () => {
  it('keeps its history, and none of the last holder’s notes or name', async () => {
    const [first, next] = [await makeMember(society, { name: 'The one before' }), await makeMember(society)];
    const plot = await makePlot(society, 'H1', [first.id]);
    const bed = await makeBed(society, plot);
    await done(
      recordPlanting.run(
        first.caller,
        once({ bedId: bed.id, cropKey: 'leek', season: '2025', notes: 'my own secret' }),
      ),
    );
    await done(endTenancy.run(society.secretary.caller, once({ plotId: plot.plotId, from, sure: 'yes' })));
    await expect(readBed.run(first.caller, { bedId: bed.id })).rejects.toThrow();
    await done(letPlot.run(society.secretary.caller, once({ plotId: plot.plotId, memberIds: next.id, from })));
    const seen = JSON.stringify(await readBed.run(next.caller, { bedId: bed.id }));
    expect(seen).toContain('Leek');
    expect(seen).not.toContain('my own secret');
    expect(seen).not.toContain('The one before');
    await done(memberLeaves.run(society.secretary.caller, once({ memberId: first.id, on: from, sure: 'yes' })));
    await done(eraseMember.run(society.secretary.caller, once({ memberId: first.id, sure: 'yes' })));
    expect(JSON.stringify(await db().auditRow.findMany({ where: { societyId: society.id } }))).not.toContain(
      'The one before',
    );
  });

  it('is halved and joined again with beds, tenancy and history', async () => {
    const holder = await makeMember(society);
    const plot = await makePlot(society, 'J1', [holder.id]);
    const [top, bottom] = [await makeBed(society, plot, 0), await makeBed(society, plot, 3)];
    await done(recordPlanting.run(holder.caller, once({ bedId: bottom.id, cropKey: 'onion', season: '2026' })));
    const secretary = society.secretary.caller;
    const halving = (at: string, secondNumber = 'J1B') =>
      halvePlot.run(
        secretary,
        once({ plotId: plot.plotId, across: 'length', at, firstNumber: 'J1A', secondNumber, from }),
      );
    expect(await refusedWith(halving('6 m', 'j1a'))).toEqual(['plot-number-taken']);
    expect(await refusedWith(halving('1 m'))).toEqual(['cut-through-bed']);
    expect(await refusedWith(halving('30 m'))).toEqual(['cut-outside-plot']);
    const { plotIds } = await done(halving('6 m'));
    const beds = await db().bed.findMany({ where: { plotId: { in: plotIds } }, orderBy: { yCm: 'asc' } });
    expect(beds.map(({ plotId }) => plotId)).toEqual(plotIds);
    const history = await readBed.run(holder.caller, { bedId: beds[1]?.id });
    expect(history.plantings.map(({ cropName }) => cropName)).toEqual(['Onion']);
    expect(top.footprint.yCm).toBeLessThan(600);

    const join = (on: string) =>
      joinPlots.run(secretary, once({ plotId: plotIds[0], otherId: plotIds[1], number: 'J1', from: on }));
    // On the day of the halving the halves have not been let for a day yet.
    expect(await refusedWith(join(from))).toEqual(['end-before-start']);
    const { plotId } = await done(join('2026-11-20'));
    const joined = await db().plot.findUniqueOrThrow({ where: { id: plotId } });
    expect(Number(joined.areaCm2)).toBe(1_600_000);
    expect(await db().tenancy.count({ where: { plotId, holdingId: plot.holdingId, untilOn: null } })).toBe(1);
  });

  it('has beds that are not split into two of one name, nor into a neighbour’s', async () => {
    const holder = await makeMember(society);
    const plot = await makePlot(society, 'S1', [holder.id]);
    const [bed] = [await makeBed(society, plot, 0), await makeBed(society, plot, 1)];
    const split = ([firstName, secondName]: readonly [string, string]) =>
      splitBed.run(holder.caller, once({ bedId: bed.id, across: 'length', at: '1 m', firstName, secondName, from }));
    for (const names of [
      ['1', '1'],
      ['2', '1a'],
      ['1a', '2'],
    ] as [string, string][])
      expect(await refusedWith(split(names))).toEqual(['bed-name-taken']);
    expect((await done(split(['1', '1a']))).bedIds).toHaveLength(2);
  });

  it('is not drawn over another plot, nor crossing itself', async () => {
    const plot = await makePlot(society, 'D1', [], false);
    const draw = (change: object) =>
      drawPlot.run(
        society.secretary.caller,
        once({ plotId: plot.plotId, east: '0 m', south: '0 m', width: '8 m', length: '20 m', ...change }),
      );
    expect(await refusedWith(draw({}))).toEqual(['polygon-overlaps']);
    expect(await refusedWith(draw({ corners: '0;0\n10 m;10 m\n10 m;0\n0;10 m' }))).toEqual(['polygon-crosses-itself']);
    expect(await refusedWith(draw({ width: '-8', east: '1e308' }))).not.toEqual([]);
    await done(draw({ east: '200 m' }));
  });

  it('is not let twice', async () => {
    const [one, other] = [await makeMember(society), await makeMember(society)];
    const plot = await makePlot(society, 'T1', []);
    const letting = (memberId: string) =>
      letPlot.run(society.secretary.caller, once({ plotId: plot.plotId, memberIds: memberId, from }));
    const outcomes = await Promise.all([letting(one.id), letting(other.id)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
  });
});
