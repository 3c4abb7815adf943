import type { SourceKey } from './sources';

type Distance = { readonly cm: number; readonly source: SourceKey };

/** How paths that were drawn by hand are read [cm]. A path is about a metre wide, and its line is drawn along its middle. */
export const pathDistances = {
  /** An end of a path that lies no farther than this from another is joined to it. */
  join: { cm: 100, source: 'common-practice' },
  /** Of a plot's frontage, the middle is walked to where it is no more than this farther from the plot than the nearest. */
  frontage: { cm: 50, source: 'common-practice' },
  /** A plot that lies farther than this from every path is one that no path reaches. */
  reach: { cm: 500, source: 'common-practice' },
} as const satisfies Record<string, Distance>;
