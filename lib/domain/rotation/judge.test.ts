import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaCm2, type Footprint, footprint } from '../ground/footprint';
import { judge, type RotationSettings, type TroubleOnGround } from './judge';
import type { RecordedPlanting } from './recorded-planting';

const settings: RotationSettings = { breakYears: { alliums: 3, beans: 2 }, edgeWidthCm: 30, edgeSharePercent: 5 };
const exact: RotationSettings = { ...settings, edgeWidthCm: 0, edgeSharePercent: 0 };
const bed = footprint(0, 0, 200, 400);

function planting(
  id: string,
  season: number,
  ground: Footprint = bed,
  hostGroups: readonly string[] = ['alliums'],
): RecordedPlanting {
  return {
    id,
    footprint: ground,
    cropKey: hostGroups.length ? 'leek' : 'bare',
    hostGroups,
    cropGroup: null,
    firstSeason: season,
    lastSeason: season,
  };
}
const bare = (season: number, ground = bed) => planting(`bare ${season}`, season, ground, []);
const onions = (season: number, ground = bed) => ({ footprint: ground, hostGroups: ['alliums'], season });

describe('a break of three', () => {
  it('allows 2022 then 2026', () => {
    const history = [planting('a', 2022), bare(2023), bare(2024), bare(2025)];
    expect(judge({ proposal: onions(2026), history, settings }).verdict).toBe('kept');
  });

  it('is a year short with 2022 then 2025', () => {
    const { verdict, findings, areas } = judge({
      proposal: onions(2025),
      history: [planting('a', 2022), bare(2023), bare(2024)],
      settings,
    });
    expect(verdict).toBe('short');
    expect(areas.shortCm2).toBe(areaCm2(bed));
    expect(findings[0]).toEqual({
      code: 'short',
      hostGroup: 'alliums',
      trouble: null,
      cause: { plantingId: 'a', cropKey: 'leek', season: 2022 },
      clearYears: 2,
      breakYears: 3,
      yearsShort: 1,
      areaCm2: areaCm2(bed),
    });
  });

  it('is not known while a season of it has no record', () => {
    const { verdict, findings } = judge({ proposal: onions(2026), history: [bare(2023), bare(2025)], settings });
    expect(verdict).toBe('not-known');
    expect(findings[0]).toMatchObject({ code: 'not-known', missing: [2024] });
  });

  it('takes short before not known', () => {
    expect(judge({ proposal: onions(2026), history: [planting('a', 2025)], settings }).verdict).toBe('short');
  });
});

describe('ground, not labels', () => {
  const known = [bare(2023), bare(2024), bare(2025)];

  it('gives the share: 30 % of this row stands on last year’s leeks', () => {
    const leeks = planting('a', 2025, footprint(0, 0, 200, 120));
    const { areas } = judge({ proposal: onions(2026), history: [...known, leeks], settings });
    expect(areas).toEqual({ keptCm2: 56_000, shortCm2: 24_000, notKnownCm2: 0, outsideCm2: 0 });
  });

  it.each([
    [29, 'kept'],
    [30, 'short'],
  ])('counts an overlap %i cm wide as %s', (widthCm, verdict) => {
    const strip = planting('a', 2025, footprint(0, 0, 200, widthCm));
    expect(judge({ proposal: onions(2026), history: [...known, strip], settings }).verdict).toBe(verdict);
  });

  it('counts under 5 % as an edge, however wide', () => {
    const wide = footprint(0, 0, 1000, 1000);
    const history = [
      bare(2023, wide),
      bare(2024, wide),
      bare(2025, wide),
      planting('a', 2025, footprint(0, 0, 200, 200)),
    ];
    const { verdict, findings } = judge({ proposal: onions(2026, wide), history, settings });
    expect(verdict).toBe('kept');
    expect(findings[0]?.code).toBe('edge-only');
  });

  it('leaves unknown seasons unknown under a mere edge', () => {
    const edge = planting('a', 2025, footprint(0, 0, 200, 20));
    const { verdict, findings, areas } = judge({ proposal: onions(2026), history: [edge], settings });
    expect(verdict).toBe('not-known');
    expect(areas.shortCm2).toBe(0);
    expect(findings.map(({ code }) => code).toSorted()).toEqual(['edge-only', 'not-known', 'not-known']);
  });

  it('does not call a narrow row an edge of itself', () => {
    const row = footprint(0, 0, 20, 400);
    expect(judge({ proposal: onions(2026, row), history: [planting('a', 2025)], settings }).verdict).toBe('short');
  });

  it('leaves crops without host groups outside the rotation', () => {
    expect(judge({ proposal: { ...onions(2026), hostGroups: [] }, history: [], settings }).verdict).toBe('outside');
  });

  const corner = footprint(0, 0, 200, 100);
  const trouble = (foundSeason: number, given: Partial<TroubleOnGround> = {}): TroubleOnGround => ({
    id: 't',
    troubleKey: 'basal-rot',
    hosts: ['alliums'],
    footprint: corner,
    foundSeason,
    breakYears: 8,
    ...given,
  });

  it('wants the longer break only where the trouble was found', () => {
    const history = [planting('a', 2022), ...known];
    const { areas, findings } = judge({ proposal: onions(2026), history, settings, troubles: [trouble(2022)] });
    expect(areas.shortCm2).toBe(areaCm2(corner));
    expect(findings[0]).toMatchObject({
      code: 'short',
      breakYears: 8,
      yearsShort: 5,
      cause: { plantingId: 'a' },
      trouble: { key: 'basal-rot', foundSeason: 2022 },
    });
  });

  it('counts the season in which it was found as one with a host, and never ends where no break clears it', () => {
    const verdictIn = (foundSeason: number, breakYears: number | null) =>
      judge({
        proposal: onions(2026, corner),
        history: known,
        settings,
        troubles: [trouble(foundSeason, { breakYears })],
      });
    expect(verdictIn(2024, 4).findings[0]).toMatchObject({ code: 'short', cause: null, yearsShort: 3 });
    expect(verdictIn(2022, 3).verdict).toBe('kept');
    expect(verdictIn(1990, null).findings[0]).toMatchObject({ code: 'short', breakYears: null, yearsShort: null });
    expect(verdictIn(2026, null).verdict).toBe('kept');
  });

  it('crosses families where the trouble does, and leaves unknown what is not on record since it was found', () => {
    const beans = planting('bean', 2023, corner, ['beans']);
    const troubles = [trouble(2021, { hosts: ['alliums', 'beans'], breakYears: 5 })];
    const history = [beans, ...known];
    expect(judge({ proposal: onions(2026, corner), history, settings, troubles }).findings[0]).toMatchObject({
      code: 'short',
      cause: { plantingId: 'bean' },
      clearYears: 2,
    });
    const since = [trouble(2019, { breakYears: 6 })];
    const open = judge({ proposal: onions(2026, corner), history: known, settings, troubles: since });
    expect(open.verdict).toBe('not-known');
    expect(open.findings[0]).toMatchObject({ code: 'not-known', missing: [2020, 2021, 2022] });
  });

  it('refuses a broken setting', () => {
    expect(() =>
      judge({ proposal: onions(2026), history: [], settings: { ...settings, breakYears: { alliums: 1.5 } } }),
    ).toThrow(RangeError);
  });
});

const rect = fc
  .record({ x: fc.nat(7), y: fc.nat(7), w: fc.integer({ min: 1, max: 5 }), l: fc.integer({ min: 1, max: 5 }) })
  .map(({ x, y, w, l }) => footprint(x, y, w, l));
const record = fc.record({
  ground: rect,
  season: fc.integer({ min: 2021, max: 2026 }),
  hosts: fc.subarray(['alliums', 'beans']),
});
const histories = fc
  .array(record, { maxLength: 8 })
  .map((rows) => rows.map(({ ground, season, hosts }, at) => planting(`p${at}`, season, ground, hosts)));
const proposals = fc
  .record({ ground: rect, hosts: fc.subarray(['alliums', 'beans'], { minLength: 1 }) })
  .map(({ ground, hosts }) => ({ footprint: ground, hostGroups: hosts, season: 2026 }));

describe('against a slow and obvious judge, square centimetre by square centimetre', () => {
  it('agrees on every area', () => {
    fc.assert(
      fc.property(proposals, histories, (proposal, history) => {
        const { keptCm2, shortCm2, notKnownCm2 } = judge({ proposal, history, settings: exact }).areas;
        expect({ keptCm2, shortCm2, notKnownCm2 }).toEqual(slowly(proposal, history));
      }),
    );
  });

  it('is moved neither by the order of the records nor by a record cut in two', () => {
    fc.assert(
      fc.property(proposals, histories, (proposal, history) => {
        const areas = judge({ proposal, history, settings }).areas;
        const cut = history.flatMap((one) => {
          const { xCm, yCm, widthCm, lengthCm } = one.footprint;
          if (widthCm < 2) return [one];
          return [
            { ...one, footprint: footprint(xCm, yCm, 1, lengthCm) },
            { ...one, id: `${one.id}b`, footprint: footprint(xCm + 1, yCm, widthCm - 1, lengthCm) },
          ];
        });
        expect(judge({ proposal, history: history.toReversed(), settings }).areas).toEqual(areas);
        expect(judge({ proposal, history: cut, settings }).areas).toEqual(areas);
      }),
    );
  });

  it('finds no less short ground when more is known', () => {
    fc.assert(
      fc.property(proposals, histories, record, (proposal, history, { ground, season, hosts }) => {
        const more = [...history, planting('more', season, ground, hosts)];
        expect(judge({ proposal, history: more, settings: exact }).areas.shortCm2).toBeGreaterThanOrEqual(
          judge({ proposal, history, settings: exact }).areas.shortCm2,
        );
      }),
    );
  });
});

function slowly(
  proposal: { footprint: Footprint; hostGroups: readonly string[]; season: number },
  history: readonly RecordedPlanting[],
) {
  const areas = { keptCm2: 0, shortCm2: 0, notKnownCm2: 0 };
  const { xCm, yCm, widthCm, lengthCm } = proposal.footprint;
  for (let x = xCm; x < xCm + widthCm; x++)
    for (let y = yCm; y < yCm + lengthCm; y++) {
      const here = history.filter(
        ({ footprint: f, firstSeason }) =>
          firstSeason < proposal.season && x >= f.xCm && x < f.xCm + f.widthCm && y >= f.yCm && y < f.yCm + f.lengthCm,
      );
      const breaks = proposal.hostGroups.map((group) => exact.breakYears[group] ?? 0);
      const isShort = proposal.hostGroups.some((group, at) =>
        here.some((one) => one.hostGroups.includes(group) && proposal.season - one.lastSeason - 1 < (breaks[at] ?? 0)),
      );
      const seasons = Array.from({ length: Math.max(...breaks) }, (_, back) => proposal.season - 1 - back);
      const isKnown = seasons.every((season) =>
        here.some(({ firstSeason, lastSeason }) => firstSeason <= season && lastSeason >= season),
      );
      areas[isShort ? 'shortCm2' : isKnown ? 'keptCm2' : 'notKnownCm2'] += 1;
    }
  return areas;
}
