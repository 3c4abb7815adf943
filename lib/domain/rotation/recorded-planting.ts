import type { Season } from '../calendar/season-of';
import type { CropGroup } from '../catalogue/crop-groups';
import type { Footprint } from '../ground/footprint';

/**
 * One crop on one footprint, as the rotation sees it. A record that nothing was grown is one too, with the crop key
 * `bare` and no host groups: it makes the season known.
 */
export type RecordedPlanting = {
  readonly id: string;
  readonly footprint: Footprint;
  readonly cropKey: string;
  readonly hostGroups: readonly string[];
  readonly cropGroup: CropGroup | null;
  readonly firstSeason: Season;
  readonly lastSeason: Season;
};

/** The crop key of a record that the ground was bare. */
export const bareKey = 'bare';
