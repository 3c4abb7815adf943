import 'server-only';
import { bedById, type BedRecord } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import type { HoldingOnDay } from '@/lib/data/holding';
import { type PlantingRecord, plantingById } from '@/lib/data/planting';
import type { Scope } from '@/lib/data/scope';
import { settingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { overlap } from '@/lib/domain/ground/footprint';
import { hasGrown, standsOn } from '@/lib/domain/harvest/standing-crop';
import { canSeePrivateRecords } from '@/lib/domain/policy/holding';
import { bedsOnGround } from '../ground/measure';
import { openBed, type OpenBed } from '../ground/open-bed';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

export type OpenPlanting = OpenBed & {
  readonly holding: HoldingOnDay;
  readonly planting: PlantingRecord;
  readonly settings: SettingValues;
};

/** A planting that the viewer may log a harvest of: on ground that they hold themselves; not found for anybody else. */
export async function openPlanting(at: At, plantingId: string): Promise<OpenPlanting> {
  const { db, scope, today } = at;
  const [crops, settings] = await Promise.all([cropsOf(db, scope), settingsOn(db, scope, today)]);
  const planting = await plantingById(db, scope, crops, plantingId);
  if (!planting) throw new NotFound();
  const { holding, ...open } = await openBed(at, await bedToday(at, planting));
  if (!holding || !canSeePrivateRecords(scope, holding) || !isTheirs(planting, holding, settings, today))
    throw new NotFound();
  return { ...open, holding, planting, settings };
}

/** The bed that the ground of a planting is part of today: beds are split and joined, and plots are halved, while a crop stands. */
async function bedToday({ db, scope, today }: At, planting: PlantingRecord): Promise<string> {
  const bed = await bedById(db, scope, planting.bedId);
  if (!bed || bed.retiredOn === null || bed.retiredOn > today) return planting.bedId;
  const beds = await bedsOnGround(db, scope, planting.frameId, today);
  return (bedUnder(planting, beds) ?? bed).id;
}

/** Of beds that stand, the one under a planting; undefined where none is. */
export function bedUnder(
  { bedId, frameId, footprint }: PlantingRecord,
  beds: readonly BedRecord[],
): BedRecord | undefined {
  const under = beds.filter((bed) => bed.frameId === frameId && overlap(bed.footprint, footprint));
  return under.find(({ id }) => id === bedId) ?? under[0];
}

/** Whether a holding may pick of a planting on its ground: of what it grew, and of what it found standing there. */
export function isTheirs(
  planting: PlantingRecord,
  holding: Pick<HoldingOnDay, 'id'>,
  settings: SettingValues,
  today: CalendarDate,
): boolean {
  const { holdingId } = planting;
  const grew = holdingId === null || holdingId === holding.id;
  return grew ? hasGrown(planting, today) : standsOn(planting, today, settings.seasonFrom);
}
