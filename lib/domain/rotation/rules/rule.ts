import type { Season } from '../../calendar/season-of';
import type { Crop } from '../../catalogue/crops';
import type { SuccessionRule } from '../../catalogue/succession-rules';
import { areaCm2, type Footprint, overlap, subtract } from '../../ground/footprint';
import type { WorkKind } from '../../ground/work-kinds';
import type { RecordedPlanting } from '../recorded-planting';

/** Something done to ground for a season. */
export type GroundWorkRecord = {
  readonly kind: WorkKind;
  readonly season: Season;
  readonly footprint: Footprint;
};

/** A crop on some ground in a season, with what is on record there. All of one frame. */
export type Succession = {
  readonly crop: Pick<Crop, 'cropGroup' | 'takesManure'>;
  readonly footprint: Footprint;
  readonly season: Season;
  readonly history: readonly RecordedPlanting[];
  readonly works: readonly GroundWorkRecord[];
};

/** Ground against which a rule speaks [cm²]. */
export type Advice = { readonly rule: SuccessionRule['key']; readonly areaCm2: number };

/** A general rule: pure, and without the words. It advises; it never makes ground fall short. */
export type Rule = {
  readonly id: SuccessionRule['key'];
  readonly severity: 'advice';
  /** The ground it speaks against [cm²]; 0 where it has nothing to say. */
  readonly check: (succession: Succession) => number;
};

/** How much of some ground lies under any of some records [cm²]. */
export function coveredCm2(ground: Footprint, records: readonly { readonly footprint: Footprint }[]): number {
  const left = subtract(
    ground,
    records.map(({ footprint }) => footprint),
  );
  return areaCm2(ground) - left.reduce((sum, piece) => sum + areaCm2(piece), 0);
}

/** What stood on some of the ground in a season. */
export function stoodIn({ history, footprint }: Succession, season: Season): readonly RecordedPlanting[] {
  return history.filter(
    (one) => one.firstSeason <= season && one.lastSeason >= season && overlap(one.footprint, footprint) !== null,
  );
}
