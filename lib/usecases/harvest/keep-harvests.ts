import 'server-only';
import { createHarvest, harvestById, moveLots, retireHarvest as takeBack } from '@/lib/data/harvest';
import { holdingsOfMember } from '@/lib/data/holding';
import { clearPlanting } from '@/lib/data/planting';
import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { begunOn, type Growing, harvestSeason } from '@/lib/domain/harvest/standing-crop';
import { canEnter } from '@/lib/domain/policy/standing';
import { logHarvestInput, retireHarvestInput } from '@/lib/schemas/harvest/harvest';
import { seasonsCleared } from '../ground/place-planting';
import { tellHolders } from '../ground/tell-holders';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { type OpenPlanting, openPlanting } from './open-planting';
import { typedAmount } from './typed-amount';

/** Log what was lifted or picked of a planting, or correct what was logged, which is kept; and say that it is cleared. */
export const logHarvest = mutation({
  name: 'log-harvest',
  allow: canEnter,
  input: logHarvestInput,
  write: async (context, input) => {
    const { tx, scope, today, now, note } = context;
    const { plantingId, replaces, measure, quality, notes, onDay: on } = input;
    const open = await openPlanting({ db: tx, scope, today }, plantingId);
    checkDay(open.planting, on, today);
    const amount = typedAmount(input.amount, measure, scope.units);
    if (replaces) await retireOfHolding(context, replaces, open);
    const harvest = { plantingId, holdingId: open.holding.id, on, measure, amount, quality, notes };
    const harvestId = await createHarvest(tx, scope, harvest, now);
    if (replaces) await moveLots(tx, scope, replaces, harvestId);
    // How much it was is nobody's but theirs, and stays out of the book.
    note({ verb: replaces ? 'corrected' : 'logged', ...bookOf(open, harvestId), before: replaces && { replaces } });
    if (input.cleared) await clear(context, open, on);
    return { harvestId, season: harvestSeason(open.planting, on) };
  },
});

/** Take a log of a harvest back; the row is kept. */
export const retireHarvest = mutation({
  name: 'retire-harvest',
  allow: canEnter,
  input: retireHarvestInput,
  write: async ({ tx, scope, today, now, note }, { harvestId }) => {
    const harvest = await harvestById(tx, scope, harvestId);
    const own = await holdingsOfMember(tx, scope, scope.memberId, today);
    const holding = own.find(({ id }) => id === harvest?.holdingId);
    if (!holding || !(await takeBack(tx, scope, harvestId, now))) throw new NotFound();
    note({ verb: 'taken back', thing: 'harvest', thingId: harvestId, forHoldingId: holding.id });
    return { harvestId };
  },
});

function checkDay(planting: Growing, on: CalendarDate, today: CalendarDate): void {
  const begun = begunOn(planting);
  if (on > today) refuse('harvest-in-the-future', { field: 'onDay' });
  if (begun && on < begun) refuse('harvest-before-sown', { field: 'onDay', numbers: { begun } });
  // Leeks and parsnips are lifted well into the year after.
  const [least, most] = [planting.firstSeason, planting.lastSeason + 1];
  const year = yearOf(on);
  if ((!begun && year < least) || year > most)
    refuse('harvest-out-of-season', { field: 'onDay', numbers: { least, most: Math.min(most, yearOf(today)) } });
}

async function retireOfHolding({ tx, scope, now }: WriteContext, id: string, { holding }: OpenPlanting): Promise<void> {
  const before = await harvestById(tx, scope, id);
  if (before?.holdingId !== holding.id || !(await takeBack(tx, scope, id, now))) throw new NotFound();
}

function bookOf({ holding, planting, bed }: OpenPlanting, thingId: string) {
  const after = { crop: planting.cropKey, season: planting.firstSeason, bed: bed.name };
  return { thing: 'harvest', thingId, forHoldingId: holding.id, after };
}

async function clear(context: WriteContext, open: OpenPlanting, clearedOn: CalendarDate): Promise<void> {
  const { tx, scope, today, note } = context;
  const { planting, settings, holding, bed } = open;
  if (planting.clearedOn !== null) return;
  const seasons = seasonsCleared(planting, clearedOn, settings);
  await clearPlanting(tx, scope, planting.id, { clearedOn, ...seasons, planned: seasons.firstSeason > yearOf(today) });
  const facts = { crop: planting.cropKey, season: planting.firstSeason, bed: bed.name };
  note({
    verb: 'cleared',
    thing: 'planting',
    thingId: planting.id,
    forHoldingId: holding.id,
    before: { ...facts, clearedOn: null, lastSeason: planting.lastSeason },
    after: { ...facts, clearedOn, ...seasons },
  });
  await tellHolders(context, open);
}
