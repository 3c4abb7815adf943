import { coveredCm2, type Rule, stoodIn } from './rule';

/** Rhubarb, asparagus and soft fruit keep their ground: nothing rotated is planned where one stands. Common practice. */
export const standingApart: Rule = {
  id: 'standing-apart',
  severity: 'advice',
  check: (succession) =>
    succession.crop.cropGroup === 'standing'
      ? 0
      : coveredCm2(
          succession.footprint,
          stoodIn(succession, succession.season).filter(
            ({ cropGroup, lastSeason, firstSeason }) => cropGroup === 'standing' && lastSeason > firstSeason,
          ),
        ),
};
