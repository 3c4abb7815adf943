import { coveredCm2, type Rule } from './rule';

/** Lime for the season of potatoes, or the one before, brings scab: common practice. */
export const potatoesOffLime: Rule = {
  id: 'potatoes-off-lime',
  severity: 'advice',
  check: ({ crop, footprint, season, works }) =>
    crop.cropGroup === 'potatoes'
      ? coveredCm2(
          footprint,
          works.filter((work) => work.kind === 'limed' && (work.season === season || work.season === season - 1)),
        )
      : 0,
};
