import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Footprint, footprint } from '../ground/footprint';
import { type Finding, judge, type RotationSettings } from './judge';
import type { RecordedPlanting } from './recorded-planting';

// No edge is forgiven here: 5 % of half a bed is another area than 5 % of all of it.
const settings: RotationSettings = { breakYears: { alliums: 3, beans: 2 }, edgeWidthCm: 0, edgeSharePercent: 0 };

const ground = fc
  .record({ x: fc.nat(7), y: fc.nat(7), w: fc.integer({ min: 2, max: 6 }), l: fc.integer({ min: 1, max: 5 }) })
  .map(({ x, y, w, l }) => footprint(x, y, w, l));
const hosts = fc.subarray(['alliums', 'beans'], { minLength: 1 });
const record = fc.record({ ground, season: fc.integer({ min: 2022, max: 2025 }), hosts });
const histories = fc.array(record, { maxLength: 6 }).map((rows) =>
  rows.map(
    (row, at): RecordedPlanting => ({
      id: `p${at}`,
      footprint: row.ground,
      cropKey: 'leek',
      hostGroups: row.hosts,
      cropGroup: null,
      firstSeason: row.season,
      lastSeason: row.season,
    }),
  ),
);

describe('a planting cut in two', () => {
  it('keeps the area of every finding, and changes no record', () => {
    fc.assert(
      fc.property(ground, hosts, histories, (whole, hostGroups, history) => {
        const before = structuredClone(history);
        const found = (footprint: Footprint) =>
          judge({ proposal: { footprint, hostGroups, season: 2026 }, history, settings }).findings;
        const left = { ...whole, widthCm: 1 };
        const right = { ...whole, xCm: whole.xCm + 1, widthCm: whole.widthCm - 1 };
        expect(areasByFinding([...found(left), ...found(right)])).toEqual(areasByFinding(found(whole)));
        expect(history).toEqual(before);
      }),
    );
  });
});

function areasByFinding(findings: readonly Finding[]): Record<string, number> {
  const areas: Record<string, number> = {};
  for (const finding of findings) {
    const key =
      finding.code === 'not-known' ? 'not-known' : `${finding.code} ${finding.hostGroup} ${finding.cause?.plantingId}`;
    areas[key] = (areas[key] ?? 0) + finding.areaCm2;
  }
  return areas;
}
