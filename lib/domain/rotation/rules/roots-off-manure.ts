import { coveredCm2, type Rule } from './rule';

/** Long roots fork in ground manured for their own season: common practice. */
export const rootsOffManure: Rule = {
  id: 'roots-off-manure',
  severity: 'advice',
  check: ({ crop, footprint, season, works }) =>
    crop.cropGroup === 'roots' && !crop.takesManure
      ? coveredCm2(
          footprint,
          works.filter((work) => work.kind === 'manured' && work.season === season),
        )
      : 0,
};
