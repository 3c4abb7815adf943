import 'server-only';
import type { HoldingOnDay } from '@/lib/data/holding';
import { type NextStep, nextSteps } from '@/lib/domain/dates/next-steps';
import { type DatedWindow, windowsOf } from '@/lib/domain/dates/windows-of';
import type { Dated } from '@/lib/domain/reminders/dated';
import type { ReadContext } from '../operation';
import { type DatedGround, datedGround, datedOf, type PlantingOnBed } from './dated-ground';
import { placeOf } from './read-dates';

/**
 * The windows of the coming year as days of a calendar: for each planting the first way that is still open, its sowing and its planting as far
 * as they are to come; and the crops that are to be cleared for the next.
 */
export async function datesOfDates(
  context: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holdings: readonly HoldingOnDay[],
): Promise<Dated[]> {
  const ground = await datedGround(context, holdings);
  const sowings = ground.plantings.flatMap((planting) => {
    const [next] = nextSteps(datedOf(planting), ground.frosts, context.today);
    if (!next || next.state.code === 'closed') return [];
    const { cropName, season, bedId, bedName, plotNumber } = placeOf(planting);
    const facts = { crop: cropName, season, bedId, bed: bedName, plot: plotNumber };
    return [next, ...plantingAfter(next, planting, ground)].map(({ step, from, to }) => {
      const code = step === 'plant-out' ? 'plant' : 'sow';
      return { key: `${code} ${planting.id}`, code, from, to, facts: { ...facts, step } };
    });
  });
  return [...sowings, ...clearings(ground)];
}

/** Where seed goes in elsewhere: when its plants are planted out. */
function plantingAfter({ step, way }: NextStep, planting: PlantingOnBed, { frosts }: DatedGround): DatedWindow[] {
  if (step !== 'under-cover' && step !== 'seedbed') return [];
  const ways = windowsOf(planting.cropKey, planting.firstSeason, frosts);
  return (ways.find((one) => one.way === way)?.windows ?? []).filter((window) => window.step === 'plant-out');
}

function clearings({ plantings, conflicts }: DatedGround): Dated[] {
  const placeIn = new Map(plantings.map((planting) => [planting.id, placeOf(planting)]));
  const wanted = new Map<string, Dated>();
  for (const one of conflicts) {
    if (one.code !== 'stands-too-long' && one.code !== 'stands-on') continue;
    const [before, next] = [placeIn.get(one.beforeId), placeIn.get(one.plantingId)];
    const earlier = wanted.get(one.beforeId);
    if (!before || !next || (earlier && earlier.to <= one.wantedBy)) continue;
    const { cropName: crop, bedId, bedName: bed, plotNumber: plot } = before;
    const facts = { crop, bedId, bed, plot, next: next.cropName };
    const span = { from: one.wantedFrom, to: one.wantedBy };
    wanted.set(one.beforeId, { key: `clear ${one.beforeId}`, code: 'clear', ...span, facts });
  }
  return [...wanted.values()];
}
