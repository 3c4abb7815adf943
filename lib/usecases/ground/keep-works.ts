import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { createWorks, retireWork as takeBack, worksIn } from '@/lib/data/ground-work';
import { plantingsIn } from '@/lib/data/planting';
import { type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { logWorkInput, retireWorkInput } from '@/lib/schemas/ground/work';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { habitsOnGround } from '../recipes/habits-on-ground';
import { limeClashesOf, waitsOf } from './food-and-lime';
import { type OpenBed, openBed } from './open-bed';
import { partOf } from './place-planting';
import { tellHolders } from './tell-holders';
import { worksTyped } from './typed-work';

/**
 * Log what was done to a bed or a strip of it. What really happened can always be logged: that a harvest has to wait, or
 * that lime and manure came too close, is told beside it. Manure resets the turn.
 */
export const logWork = mutation({
  name: 'log-work',
  allow: canEnter,
  input: logWorkInput,
  write: async (context, input) => {
    const { tx, scope, today, note } = context;
    const open = await openBed({ db: tx, scope, today }, input.bedId);
    const { season, doneOn } = input;
    const thisYear = Number(today.slice(0, 4));
    if (season > thisYear + 1)
      refuse('season-out-of-range', { field: 'season', numbers: { least: 1900, most: thisYear + 1 } });
    if (doneOn && doneOn > today) refuse('done-in-the-future', { field: 'doneOn' });
    const footprint = partOf(open.bed.footprint, input, scope.units);
    const { barrowLitres } = await habitsOnGround(tx, scope, open.holding, today);
    const works = worksTyped(input, { footprint, barrowLitres: barrowLitres.value, units: scope.units });
    const where = { season, doneOn, footprint, frameId: open.bed.frameId, holdingId: open.holding?.id ?? null };
    await createWorks(
      tx,
      scope,
      works.map((work) => ({ ...work, ...where })),
    );
    for (const { kind, ...put } of works)
      note({
        verb: kind,
        thing: 'bed',
        thingId: open.bed.id,
        forHoldingId: where.holdingId,
        after: { season, ...told(put), ...footprint },
      });
    await tellHolders(context, open);
    return { bedId: open.bed.id, kind: input.kind, ...(await whatFollows(context, open, footprint)) };
  },
});

/** Take a log of work back; the row is kept. What a ground sheet logged is taken back there. */
export const retireWork = mutation({
  name: 'retire-work',
  allow: canEnter,
  input: retireWorkInput,
  write: async (context, { bedId, workId }) => {
    const { tx, scope, today, now, note } = context;
    const open = await openBed({ db: tx, scope, today }, bedId);
    const row = await takeBack(tx, scope, workId, now);
    if (!row || row.frameId !== open.bed.frameId) throw new NotFound();
    if (row.sheetId) refuse('work-of-a-sheet');
    note({
      verb: 'work taken back',
      thing: 'bed',
      thingId: bedId,
      forHoldingId: open.holding?.id ?? null,
      before: { work: row.kind, season: row.season, loads: row.loads },
    });
    await tellHolders(context, open);
    return { bedId };
  },
});

type Put = Omit<ReturnType<typeof worksTyped>[number], 'kind'>;

// What was said of the work; the rest has nothing to tell.
function told(put: Put): Record<string, string | number | boolean> {
  const { incorporated, ...rest } = put;
  const said = Object.entries(rest).filter(([, value]) => value !== null && value !== undefined);
  return { ...Object.fromEntries(said), ...(incorporated === false ? { leftOnTop: true } : {}) };
}

async function whatFollows({ tx, scope, today }: WriteContext, { bed }: OpenBed, footprint: Footprint) {
  const year = Number(today.slice(0, 4));
  const crops = await cropsOf(tx, scope);
  const [plantings, works] = await Promise.all([
    plantingsIn(tx, scope, crops, { from: year - 1, to: year + 2 }, [bed.frameId]),
    worksIn(tx, scope, [bed.frameId]),
  ]);
  const isHere = (one: { footprint: Footprint }) => overlap(one.footprint, footprint) !== null;
  const waits = waitsOf(plantings.filter(isHere), works, today).map(
    ({ cropName, earliestOn, whileGrowing, isWorstCase }) => ({ cropName, earliestOn, whileGrowing, isWorstCase }),
  );
  const clashes = limeClashesOf(works.filter(isHere), year).map((clash) => ({
    code: clash.code,
    ...(clash.code === 'too-soon' ? { order: clash.order, earliestOn: clash.earliestOn } : {}),
  }));
  return { waits, clashes };
}
