import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { sheetsIn, type SheetRecord } from '@/lib/data/ground-sheet';
import { type WorkRecord, worksIn } from '@/lib/data/ground-work';
import type { HoldingOnDay } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { keptSettingsOn } from '@/lib/data/setting';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import { settingValues } from '@/lib/domain/catalogue/settings';
import { conflictsOn, type DateConflict, type DateRules } from '@/lib/domain/dates/conflicts-on';
import { canStillGoIn, type DatedPlanting } from '@/lib/domain/dates/dated-planting';
import { type GroundConflict, groundReady } from '@/lib/domain/dates/ground-ready';
import type { Frosts } from '@/lib/domain/dates/windows-of';
import { overlap } from '@/lib/domain/ground/footprint';
import { limeClashesOf, waitsOf } from '../ground/food-and-lime';
import type { ReadContext } from '../operation';
import { lineOf } from '../sheets/sheet-line';

/** A planting with the bed that it stands on today, or is to stand on. */
export type PlantingOnBed = PlantingRecord & {
  readonly bed: Pick<BedRecord, 'id' | 'name'>;
  readonly plotNumber: string;
};

export type DatedGround = {
  readonly frosts: Frosts;
  /** Whether the society has entered its own frosts; else they are assumed. */
  readonly areFrostsOwn: boolean;
  readonly plantings: readonly PlantingOnBed[];
  readonly conflicts: readonly (DateConflict | GroundConflict)[];
};

/** The ground of some holdings with its dates: what stands, what is planned, and what stands in its way. */
export async function datedGround(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holdings: readonly Pick<HoldingOnDay, 'plots'>[],
): Promise<DatedGround> {
  const numbers = new Map(holdings.flatMap(({ plots }) => plots.map(({ id, number }) => [id, number] as const)));
  const kept = await keptSettingsOn(db, scope, today);
  const { lastFrost, firstFrost, edgeWidthCm, edgeSharePercent } = settingValues(kept);
  const rules = { frosts: { lastFrost, firstFrost }, today, edgeWidthCm, edgeSharePercent };
  const year = yearOf(today);
  const beds = await bedsStanding(db, scope, today, today, [...numbers.keys()]);
  const frames = [...new Set(beds.map(({ frameId }) => frameId))];
  const [plantings, sheets, works] = await Promise.all([
    plantingsIn(db, scope, await cropsOf(db, scope), { from: year - 1, to: year + 1 }, frames),
    sheetsIn(db, scope, frames),
    worksIn(db, scope, frames),
  ]);
  const here = plantings.flatMap((planting) => {
    const bed = bedUnder(planting, beds);
    const planned = planting.firstSeason >= year && (planting.planned || awaitsItsDay(planting, rules));
    return bed ? [{ ...planting, planned, bed, plotNumber: numbers.get(bed.plotId) ?? '' }] : [];
  });
  const [plantingsOf, sheetsOf, worksOf] = [byFrame(here), byFrame(sheets), byFrame(works)];
  const conflicts = frames.flatMap((frame) =>
    frameConflicts(
      plantingsOf.get(frame) ?? [],
      { sheets: sheetsOf.get(frame) ?? [], works: worksOf.get(frame) ?? [] },
      rules,
    ),
  );
  const areFrostsOwn = [kept.lastFrost, kept.firstFrost].some((one) => one !== undefined && one !== null);
  return { frosts: rules.frosts, areFrostsOwn, plantings: here, conflicts };
}

/** A planting as its dates see it. */
export function datedOf(planting: PlantingRecord): DatedPlanting {
  const { id, cropKey, firstSeason: season, footprint, planned, sownOn, plantedOn, clearedOn } = planting;
  return { id, cropKey, season, footprint, planned, sownOn, plantedOn, clearedOn };
}

// What is recorded for this season without a day is to come while it can still go in, and grown after that. What was planned for a season
// that is over counts as grown: nothing is known against it.
function awaitsItsDay({ cropKey, firstSeason }: PlantingRecord, { frosts, today }: DateRules): boolean {
  return canStillGoIn(cropKey, firstSeason, frosts, today);
}

function bedUnder(planting: PlantingRecord, beds: readonly BedRecord[]): BedRecord | undefined {
  return (
    beds.find(({ id }) => id === planting.bedId) ??
    beds.find((bed) => bed.frameId === planting.frameId && overlap(bed.footprint, planting.footprint))
  );
}

function frameConflicts(
  plantings: readonly PlantingRecord[],
  { sheets, works }: { readonly sheets: readonly SheetRecord[]; readonly works: readonly WorkRecord[] },
  rules: DateRules,
) {
  const dated = plantings.map(datedOf);
  const ground = {
    sheets: sheets.map((sheet) => ({ ...lineOf(sheet), from: sheet.order.from, footprint: sheet.footprint })),
    waits: waitsOf(plantings, works, rules.today).filter(({ isWorstCase }) => !isWorstCase),
    clashes: nearClashes(works, yearOf(rules.today)),
  };
  return [...conflictsOn(dated, rules), ...groundReady(dated, ground, rules)];
}

function nearClashes(works: readonly WorkRecord[], year: number) {
  const groundOf = (id: string) => works.find((work) => work.id === id)?.footprint;
  return limeClashesOf(works, year).flatMap((clash) => {
    const [lime, manure] = [groundOf(clash.limeId), groundOf(clash.manureId)];
    const footprint = lime && manure ? overlap(lime, manure) : null;
    return clash.code === 'too-soon' && footprint
      ? [{ footprint, days: clash.days, daysWanted: clash.daysWanted }]
      : [];
  });
}
