import type { Season } from '../calendar/season-of';
import type { RecordedPlanting } from './recorded-planting';

/** Plantings found by frame and season, without looking through all of them. */
export type SeasonIndex = {
  /** What stood in a frame in any of the seasons from one to another, each once, in the order of the records. */
  readonly between: (frameId: string, from: Season, to: Season) => readonly RecordedPlanting[];
};

/**
 * Index plantings by frame and season.
 *
 * Method: each planting is listed under every season in which it stood, within the seasons that are asked about; a
 * question then looks at those seasons only, however long the history.
 *
 * @param plantings  with their frames, in any order
 * @param seasons    first and last season that will be asked about; a crop that stands on for ever is listed in these only
 * @example          indexSeasons([], { from: 2020, to: 2026 }).between('f', 2020, 2026) → []
 */
export function indexSeasons(
  plantings: readonly (RecordedPlanting & { readonly frameId: string })[],
  seasons: { readonly from: Season; readonly to: Season },
): SeasonIndex {
  const frames = new Map<string, Map<Season, { at: number; planting: RecordedPlanting }[]>>();
  for (const [at, planting] of plantings.entries()) {
    const frame = frames.get(planting.frameId) ?? new Map<Season, { at: number; planting: RecordedPlanting }[]>();
    frames.set(planting.frameId, frame);
    const last = Math.min(planting.lastSeason, seasons.to);
    for (let season = Math.max(planting.firstSeason, seasons.from); season <= last; season++) {
      const here = frame.get(season);
      if (here) here.push({ at, planting });
      else frame.set(season, [{ at, planting }]);
    }
  }
  return {
    between: (frameId, from, to) => {
      const frame = frames.get(frameId);
      if (!frame) return [];
      const found: { at: number; planting: RecordedPlanting }[] = [];
      const first = Math.max(from, seasons.from);
      for (let season = first; season <= Math.min(to, seasons.to); season++)
        // One that stood in several seasons is taken in the first of them.
        for (const one of frame.get(season) ?? [])
          if (season === first || one.planting.firstSeason === season) found.push(one);
      return found.sort((a, b) => a.at - b.at).map(({ planting }) => planting);
    },
  };
}
