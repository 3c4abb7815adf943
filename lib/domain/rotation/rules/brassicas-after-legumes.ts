import { coveredCm2, type Rule, stoodIn } from './rule';

/**
 * Greens follow peas and beans: Ministry of Agriculture, Allotment and Garden Guide, 1945, three-year plan. It speaks only
 * where something is on record for the season before: unknown ground is not held against them.
 */
export const brassicasAfterLegumes: Rule = {
  id: 'brassicas-after-legumes',
  severity: 'advice',
  check: (succession) => {
    const { crop, footprint, season } = succession;
    if (crop.cropGroup !== 'brassicas') return 0;
    const before = stoodIn(succession, season - 1);
    const legumes = before.filter(({ cropGroup }) => cropGroup === 'legumes');
    return coveredCm2(footprint, before) - coveredCm2(footprint, legumes);
  },
};
