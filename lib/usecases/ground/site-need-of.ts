import 'server-only';
import type { BedRecord } from '@/lib/data/bed';
import { areaCm2, type Footprint } from '@/lib/domain/ground/footprint';
import { cultivableCm2 } from '@/lib/domain/need/need-of';
import { type GroundNeed, type HoldingNeed, holdingNeed } from '@/lib/domain/need/site-need';
import { strawAndMeals } from '@/lib/domain/need/straw-and-meals';
import type { Recipe } from '@/lib/domain/recipe/recipe-of';
import { coveredCm2 } from '@/lib/domain/rotation/rules/rule';
import { turnsAhead } from '@/lib/domain/rotation/turns-ahead';
import type { Dressing } from './holding-need';
import { type NeedyGround, turnOfUndivided } from './needy-ground';

type Strewn = { readonly materialKey: string | null; readonly footprint: Footprint };

type Given = {
  readonly seasons: readonly number[];
  readonly rules: Pick<Dressing, 'intervalYears' | 'cultivableSharePercent'>;
  readonly recipes: readonly Recipe[];
  /** By frame: straw and meal that the first season's ground has had. */
  readonly strewn: ReadonlyMap<string, readonly Strewn[]>;
};

/** What each plot's ground asks for, season by season; each year's due ground counts as manured in its year. */
export function plotNeeds(ground: NeedyGround, given: Given): ReadonlyMap<string, readonly GroundNeed[][]> {
  const { seasons, rules } = given;
  return new Map(
    ground.plots.map((plot) => {
      const beds = ground.bedsOf(plot.id).map((bed) => bedNeeds(bed, ground, given));
      if (beds.length) return [plot.id, seasons.map((_, at) => beds.flatMap((bed) => bed[at] ?? []))];
      const undivided = cultivableCm2(plot.areaCm2, rules.cultivableSharePercent);
      const turn = turnOfUndivided(undivided, rules.intervalYears);
      const need = { id: plot.id, areaCm2: undivided, turn, plannedCm2: 0, strewing: new Map() };
      return [plot.id, seasons.map(() => [need])];
    }),
  );
}

function bedNeeds(bed: BedRecord, ground: NeedyGround, { seasons, rules, recipes, strewn }: Given): GroundNeed[] {
  const { id, frameId, footprint } = bed;
  const [firstSeason = 0] = seasons;
  const plannedIn = (season: number) => ground.plannedOf(frameId, season);
  const turns = turnsAhead({
    ground: footprint,
    manurings: ground.manuringsOf(frameId),
    plannedIn,
    firstSeason,
    seasons: seasons.length,
    intervalYears: rules.intervalYears,
  });
  return turns.map((turn, at) => {
    const planned = plannedIn(firstSeason + at);
    const had = at === 0 ? (strewn.get(frameId) ?? []) : [];
    return {
      ...{ id, turn, areaCm2: areaCm2(footprint) },
      plannedCm2: coveredCm2(footprint, planned),
      strewing: strawAndMeals(footprint, planned, recipes, had),
    };
  });
}

type Held = { readonly id: string; readonly plots: readonly { readonly id: string; readonly number: string }[] };

/** What holdings need in one season, with the numbers of their plots. */
export function holdingNeeds(
  holdings: readonly Held[],
  needs: ReadonlyMap<string, readonly GroundNeed[][]>,
  at: number,
  dressing: Dressing,
): (HoldingNeed & { id: string; plots: string[] })[] {
  return holdings.map(({ id, plots }) => ({
    id,
    plots: plots.map(({ number }) => number),
    ...holdingNeed(
      plots.flatMap((plot) => needs.get(plot.id)?.[at] ?? []),
      dressing,
    ),
  }));
}
