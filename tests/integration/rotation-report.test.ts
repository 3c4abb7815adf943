import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { readRotation, readRotationCsv } from '@/lib/usecases/site/read-rotation';
import { readSite } from '@/lib/usecases/site/read-site';
import { done, makeBed, makeMember, makePlot, makeSociety, once, type TestSociety } from '../fixtures/society';

let society: TestSociety;
const season = Number(new Date().toISOString().slice(0, 4));

beforeAll(async () => {
  society = await makeSociety();
  const holder = await makeMember(society, { name: 'Somebody Named' });
  const stood: Record<string, string[]> = {
    '1': ['onion', 'kale', 'pea', 'maincrop-potato', 'leek'],
    '=2': ['kale', 'onion', 'pea', 'maincrop-potato', 'kale'],
  };
  for (const [number, crops] of Object.entries(stood)) {
    const plot = await makePlot(society, number, [holder.id]);
    const bed = await makeBed(society, plot);
    for (const [back, cropKey] of crops.entries())
      await done(recordPlanting.run(holder.caller, once({ bedId: bed.id, cropKey, season: String(season - back) })));
  }
  await makePlot(society, '10', []);
});

const ask = (change: object = {}) => readRotation.run(society.secretary.caller, { season: String(season), ...change });

describe('how the rotation holds', () => {
  it('adds up by plot to the whole, counted as people count them', async () => {
    const read = await ask();
    if (!read.site) return expect.fail('there is a site');
    expect(read.byPlot.map(({ number }) => number)).toEqual(['=2', '1', '10']);
    for (const key of ['keptCm2', 'shortCm2', 'notKnownCm2', 'outsideCm2', 'bareCm2'] as const)
      expect(read.byPlot.reduce((sum, { areas }) => sum + areas[key], 0)).toBe(read.total[key]);
    const site = await readSite.run(society.secretary.caller, { season: String(season) });
    expect(site.site && site.compliance.total).toEqual(read.total);
    expect(JSON.stringify(read)).not.toContain('Somebody');
  });

  it('says who would fall short if alliums had to wait a year longer, and changes nothing by it', async () => {
    const read = await ask({ group: 'allium-kin', more: '1' });
    // Onions after leeks with three clear years between: kept at three, short at four.
    expect(read.site && read.whatIf?.plots).toEqual([{ number: '1', moreCm2: 120_000, shortCm2: 120_000 }]);
    expect(read.site && read.whatIf).toMatchObject({ presentYears: 3, years: 4 });
    const again = await ask();
    expect(again.site && again.total.shortCm2).toBe(read.site && read.total.shortCm2);
    const less = await ask({ group: 'allium-kin', more: '-2' });
    expect(less.site && less.whatIf?.plots).toEqual([]);
  });

  it('comes as a table that no spreadsheet takes for a formula', async () => {
    const { text, name } = await readRotationCsv.run(society.secretary.caller, { season: String(season) });
    expect(name).toBe(`rotation-${season}.csv`);
    const [head, ...rows] = parse(text, { bom: true }) as string[][];
    expect(head?.slice(0, 3)).toEqual(['season', 'plot', 'kept m2']);
    expect(rows.map(([, plot]) => plot)).toEqual(["'=2", '1', '10']);
    expect(rows.map(([, , kept]) => kept)).toEqual(['12.00', '12.00', '0.00']);
  });
});
