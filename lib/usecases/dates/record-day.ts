import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { plantingById, type PlantingRecord } from '@/lib/data/planting';
import { lockPlanting, type PlantingDays, setPlantingDays } from '@/lib/data/planting-days';
import { settingsOn } from '@/lib/data/setting';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { isSownInPlace } from '@/lib/domain/dates/dated-planting';
import { seasonsOnRecord } from '@/lib/domain/dates/seasons-on-record';
import { canEnter } from '@/lib/domain/policy/standing';
import { recordDayInput } from '@/lib/schemas/dates/dates';
import { openBed } from '../ground/open-bed';
import { tellHolders } from '../ground/tell-holders';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';
import { datedOf } from './dated-ground';

const fields = { sown: 'sownOn', planted: 'plantedOn', cleared: 'clearedOn' } as const;
/** As the book and the page of the week tell it: who did what. */
const verbs = { sown: 'sowed', planted: 'planted', cleared: 'cleared' } as const;

type What = keyof typeof fields;

/** Record the day on which a planting was sown, planted or cleared; its seasons follow from it. A day on record is corrected on the bed's page. */
export const recordDay = mutation({
  name: 'record-day',
  allow: canEnter,
  input: recordDayInput,
  write: async (context, { plantingId, what, onDay }) => {
    const { tx, scope, today, note } = context;
    await lockPlanting(tx, scope, plantingId);
    const [crops, settings] = await Promise.all([cropsOf(tx, scope), settingsOn(tx, scope, today)]);
    const planting = await plantingById(tx, scope, crops, plantingId);
    if (!planting) throw new NotFound();
    const open = await openBed({ db: tx, scope, today }, planting.bedId);
    const field = fields[what];
    if (onDay > today) refuse('done-in-the-future', { field: 'onDay' });
    const before = planting[field];
    if (before && before !== onDay) refuse('day-recorded', { field: 'onDay', numbers: { day: before } });
    const days = daysWith({ ...planting, [field]: onDay }, settings, yearOf(today));
    check(planting, days, what);
    await setPlantingDays(tx, scope, planting.id, days);
    const facts = { crop: planting.cropKey, season: days.firstSeason, bed: open.bed.name };
    const { sownOn, plantedOn, clearedOn, firstSeason, lastSeason } = planting;
    note({
      verb: verbs[what],
      thing: 'planting',
      thingId: planting.id,
      forHoldingId: open.holding?.id ?? null,
      before: { ...facts, sownOn, plantedOn, clearedOn, season: firstSeason, lastSeason },
      after: { ...facts, ...days },
    });
    await tellHolders(context, open);
    return { plantingId: planting.id, bedId: planting.bedId, cropName: planting.cropName };
  },
});

function daysWith(planting: PlantingRecord, settings: SettingValues, year: number): PlantingDays {
  const { sownOn, plantedOn, clearedOn } = planting;
  const begunOn = plantedOn ?? (isSownInPlace(datedOf(planting), settings) ? sownOn : null);
  if (begunOn && clearedOn && clearedOn < begunOn) refuse('cleared-before-sown', { field: 'onDay' });
  const window = { fromMonthDay: settings.seasonFrom, toMonthDay: settings.seasonTo };
  const seasons = seasonsOnRecord(planting, { begunOn, clearedOn }, window);
  // What stands from season to season holds its ground until it is cleared.
  const lastSeason = clearedOn ? seasons.lastSeason : Math.max(seasons.lastSeason, planting.lastSeason);
  return { sownOn, plantedOn, clearedOn, ...seasons, lastSeason, planned: seasons.firstSeason > year };
}

function check(planting: PlantingRecord, { sownOn, plantedOn, firstSeason }: PlantingDays, what: What): void {
  if (sownOn && plantedOn && plantedOn < sownOn) refuse('planted-before-sown', { field: 'onDay' });
  if (what !== 'cleared' && firstSeason !== planting.firstSeason)
    refuse('day-of-another-season', {
      field: 'onDay',
      numbers: { season: planting.firstSeason, counts: firstSeason },
    });
}
