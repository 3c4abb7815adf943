import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaCm2, footprint } from '../ground/footprint';
import { addUp } from './compliance';
import { tallyFrame } from './frame-tally';
import type { TroubleOnGround } from './judge';
import type { RecordedPlanting } from './recorded-planting';
import { indexSeasons } from './season-index';

const settings = { breakYears: { alliums: 3 }, edgeWidthCm: 30, edgeSharePercent: 5 };
const ground = footprint(0, 0, 200, 400);
const bed = { id: 'bed', plotId: 'plot', name: '1', footprint: ground };

function stood(id: string, season: number, given: Partial<RecordedPlanting> = {}): RecordedPlanting {
  return {
    id,
    footprint: ground,
    cropKey: 'onion',
    hostGroups: ['alliums'],
    cropGroup: 'alliums',
    firstSeason: season,
    lastSeason: season,
    ...given,
  };
}
const bare = (season: number) => stood(`bare ${season}`, season, { cropKey: 'bare', hostGroups: [], cropGroup: null });
const of = (plantings: readonly RecordedPlanting[], undividedAreaCm2 = 0, troubles: readonly TroubleOnGround[] = []) =>
  addUp([
    tallyFrame({
      season: 2026,
      frameId: 'f',
      beds: [bed],
      undivided: undividedAreaCm2 ? [{ plotId: 'undivided', areaCm2: undividedAreaCm2 }] : [],
      plantings: indexSeasons(
        plantings.map((planting) => ({ ...planting, frameId: 'f' })),
        { from: 2010, to: 2026 },
      ),
      troubles,
      settings,
    }),
  ]);

describe('compliance of a season', () => {
  it('is not known where nothing is recorded, nor on ground that is not divided into beds', () => {
    expect(of([], 500).total).toEqual({ keptCm2: 0, shortCm2: 0, notKnownCm2: 80_500, outsideCm2: 0, bareCm2: 0 });
  });

  it('counts by plot, and by the trouble that makes ground short', () => {
    const corner = footprint(0, 0, 100, 100);
    const hosts = ['alliums'];
    const found = { id: 't', troubleKey: 'white-rot', hosts, footprint: corner, foundSeason: 2015, breakYears: null };
    const { byPlot, byTrouble, total } = of([stood('a', 2026), bare(2023), bare(2024), bare(2025)], 500, [found]);
    expect(byTrouble).toEqual([{ troubleKey: 'white-rot', shortCm2: 10_000 }]);
    expect(byPlot.map(({ plotId }) => plotId)).toEqual(['undivided', 'plot']);
    expect(byPlot[1]?.areas).toMatchObject({ keptCm2: 70_000, shortCm2: 10_000 });
    expect(total).toMatchObject({ keptCm2: 70_000, shortCm2: 10_000, notKnownCm2: 500 });
  });

  it('is bare where that is on record, and beside a planting', () => {
    expect(of([bare(2026)]).total.bareCm2).toBe(80_000);
    const half = stood('a', 2026, { footprint: footprint(0, 0, 200, 200) });
    expect(of([half, bare(2023), bare(2024), bare(2025)]).total).toMatchObject({ keptCm2: 40_000, bareCm2: 40_000 });
  });

  it('adds up frame by frame, in whatever order they come', () => {
    const tally = (frameId: string, plantings: readonly RecordedPlanting[]) =>
      tallyFrame({
        season: 2026,
        frameId,
        beds: [{ ...bed, id: `bed of ${frameId}`, plotId: `plot of ${frameId}` }],
        undivided: [],
        plantings: indexSeasons(
          plantings.map((planting) => ({ ...planting, frameId })),
          { from: 2010, to: 2026 },
        ),
        troubles: [],
        settings,
      });
    const frames = [tally('a', [stood('1', 2026), stood('2', 2025)]), tally('b', [bare(2026)]), tally('c', [])];
    const { total, short } = addUp(frames);
    expect(total).toEqual({ keptCm2: 0, shortCm2: 80_000, notKnownCm2: 80_000, outsideCm2: 0, bareCm2: 80_000 });
    expect(short.map(({ bedId, cropKey, shortCm2 }) => ({ bedId, cropKey, shortCm2 }))).toEqual([
      { bedId: 'bed of a', cropKey: 'onion', shortCm2: 80_000 },
    ]);
    expect(addUp(frames.toReversed()).total).toEqual(total);
    expect(addUp([]).total).toEqual({ keptCm2: 0, shortCm2: 0, notKnownCm2: 0, outsideCm2: 0, bareCm2: 0 });
  });

  it('counts doubly cropped ground once, short first', () => {
    const rhubarb = stood('r', 2026, { cropKey: 'rhubarb', cropGroup: 'standing' });
    const { total, short } = of([stood('a', 2025), stood('b', 2026), rhubarb]);
    expect(total).toMatchObject({ shortCm2: 80_000, outsideCm2: 0 });
    expect(short.map(({ bedId }) => bedId)).toEqual(['bed']);
  });

  it('does not take a standing crop for its own forerunner', () => {
    const leek = stood('a', 2025, { lastSeason: 2026 });
    expect(of([leek, bare(2022), bare(2023), bare(2024)]).total.keptCm2).toBe(80_000);
  });

  it('gives doubly cropped ground to the same group in whatever order it was recorded', () => {
    const leaves = stood('b', 2026, { cropKey: 'lettuce', hostGroups: [], cropGroup: 'leaves' });
    const roots = stood('a', 2026, { cropKey: 'radish', hostGroups: [], cropGroup: 'roots' });
    expect(of([leaves, roots]).byGroup).toEqual(of([roots, leaves]).byGroup);
    expect(of([leaves, roots]).byGroup.map(({ cropGroup }) => cropGroup)).toEqual(['roots']);
  });

  it('always adds up to the cultivable area', () => {
    const row = fc.record({
      x: fc.nat(220),
      y: fc.nat(420),
      w: fc.integer({ min: 1, max: 150 }),
      l: fc.integer({ min: 1, max: 300 }),
      season: fc.integer({ min: 2022, max: 2026 }),
      bare: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 8 }), fc.nat(1000), (rows, undivided) => {
        const plantings = rows.map(({ x, y, w, l, season, bare: isBare }, at) => ({
          ...(isBare ? bare(season) : stood('x', season)),
          id: `p${at}`,
          footprint: footprint(x, y, w, l),
        }));
        const { total, byGroup } = of(plantings, undivided);
        expect(Object.values(total).reduce((sum, area) => sum + area, 0)).toBe(areaCm2(ground) + undivided);
        const inGroups = byGroup.flatMap(({ areas }) => Object.values(areas)).reduce((sum, area) => sum + area, 0);
        expect(inGroups).toBeLessThanOrEqual(areaCm2(ground));
      }),
    );
  });
});
