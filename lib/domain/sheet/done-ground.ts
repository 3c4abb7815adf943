import type { CalendarDate } from '../calendar/calendar-date';
import { type Footprint, footprint } from '../ground/footprint';
import type { Trench, TrenchPlan } from '../trench/trench-plan';

/** A trench that is done, and when. */
export type Tick = { readonly trench: number; readonly doneOn: CalendarDate };

/** A rectangle of ground that was dug on one day, in the axes of the plot's frame, and the trenches in it. */
export type DugPiece = {
  readonly footprint: Footprint;
  readonly doneOn: CalendarDate;
  readonly trenches: readonly number[];
};

/**
 * The ground that is done, as few rectangles: trenches that lie side by side and were done on one day are one.
 *
 * Method: in order of work; a trench joins the one before it where both are of one half and one day and nothing lies
 * between them.
 *
 * @param plan    the sheet's
 * @param ground  where the plan lies: its nearest corner is added to every footprint
 * @param ticks   in any order, each trench once
 * @returns       rectangles that do not overlap, whose area is that of the trenches ticked, exactly
 * @throws RangeError on a trench that the plan has not, or one ticked twice
 * @source        common practice: part-done ground counts by its area
 * @example       trenches 1 and 2 on Monday, 3 on Tuesday → two rectangles
 */
export function dugPieces(plan: TrenchPlan, ground: Footprint, ticks: readonly Tick[]): DugPiece[] {
  const days = new Map(ticks.map(({ trench, doneOn }) => [trench, doneOn]));
  const done = plan.trenches.filter(({ number }) => days.has(number));
  if (done.length !== ticks.length) throw new RangeError('a trench is ticked once, and is one of the plan’s');
  const runs: { trenches: Trench[]; doneOn: CalendarDate }[] = [];
  for (const trench of done) {
    const doneOn = days.get(trench.number) as CalendarDate;
    const run = runs.at(-1);
    const before = run?.trenches.at(-1);
    const isNext = before?.number === trench.number - 1 && before.half === trench.half && run?.doneOn === doneOn;
    if (run && isNext) run.trenches.push(trench);
    else runs.push({ trenches: [trench], doneOn });
  }
  return runs.map(({ trenches, doneOn }) => ({
    footprint: within(
      ground,
      trenches.map((trench) => trench.footprint),
    ),
    doneOn,
    trenches: trenches.map(({ number }) => number),
  }));
}

// The rectangle that holds them all: they tile it.
function within(ground: Footprint, parts: readonly Footprint[]): Footprint {
  const left = Math.min(...parts.map(({ xCm }) => xCm));
  const top = Math.min(...parts.map(({ yCm }) => yCm));
  const right = Math.max(...parts.map(({ xCm, widthCm }) => xCm + widthCm));
  const foot = Math.max(...parts.map(({ yCm, lengthCm }) => yCm + lengthCm));
  return footprint(ground.xCm + left, ground.yCm + top, right - left, foot - top);
}
