import 'server-only';
import { createBeds, lockPlot, noteBedLineage, renameBed, retireBed as writeRetired } from '@/lib/data/bed';
import { nextBedAt, joinFootprints, splitFootprint } from '@/lib/domain/ground/beds';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { footprintOfEdges, type TenthMm } from '@/lib/domain/quantity/length';
import { addBedsInput, changeBedInput, joinBedsInput, retireBedInput, splitBedInput } from '@/lib/schemas/ground/bed';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { bedsOnGround, checkPlace, readLengths } from './measure';
import { openBed, openPlot, type OpenPlot } from './open-bed';
import { tellHolders } from './tell-holders';

/** Draw one bed, or several alike one after another, by size and position. */
export const addBeds = mutation({
  name: 'add-beds',
  allow: canEnter,
  input: addBedsInput,
  write: async (context, input) => {
    const { tx, scope, today, note } = context;
    const open = await openPlot({ db: tx, scope, today }, input.plotId);
    await lockPlot(tx, scope, open.plot.id);
    const from = input.from ?? today;
    const standing = await bedsOnGround(tx, scope, open.plot.frameId, from);
    const beds = laidOut(
      input,
      standing.map(({ footprint }) => footprint),
      scope.units,
    );
    const names = input.count === 1 ? [input.name] : beds.map((_, at) => `${input.name} ${at + 1}`);
    for (const [at, footprint] of beds.entries()) {
      const others = [
        ...standing,
        ...beds.slice(0, at).map((one, nth) => ({ ...emptyBed, name: names[nth] ?? '', footprint: one })),
      ];
      if (standing.some(({ name, plotId }) => plotId === open.plot.id && name === names[at]))
        refuse('bed-name-taken', { field: 'name', numbers: { name: names[at] ?? '' } });
      checkPlace(footprint, open.plot, others);
    }
    const typed = { width: input.width, length: input.length, x: input.x, y: input.y };
    const place = { plotId: open.plot.id, frameId: open.plot.frameId, fromOn: from, typed };
    const ids = await createBeds(
      tx,
      scope,
      beds.map((footprint, at) => ({ ...place, footprint, name: names[at] ?? '' })),
    );
    for (const [at, id] of ids.entries())
      note({
        verb: 'added',
        thing: 'bed',
        thingId: id,
        forHoldingId: open.holding?.id ?? null,
        after: { name: names[at] ?? '', ...beds[at] },
      });
    await tellHolders(context, open);
    return { bedIds: ids };
  },
});

const emptyBed = { id: '', plotId: '', frameId: '', typed: null, fromOn: '2000-01-01' as never, retiredOn: null };

type Typed = { count: number; width: string; length: string; x: string; y: string; gap: string };

// Edges are rounded, not sizes: beds that touch as typed stay touching.
function laidOut(typed: Typed, standing: readonly Footprint[], units: 'metric' | 'imperial'): Footprint[] {
  const next = nextBedAt(standing);
  const place = (text: string, otherwiseCm: number) => text.trim() || `${otherwiseCm} cm`;
  const read = readLengths(
    {
      width: { field: 'width', what: 'the width', text: typed.width },
      length: { field: 'length', what: 'the length', text: typed.length },
      x: { field: 'x', what: 'the distance from the left', text: place(typed.x, next.xCm) },
      y: { field: 'y', what: 'the distance from the top', text: place(typed.y, next.yCm) },
      gap: { field: 'gap', what: 'the path between beds', text: place(typed.gap, 60) },
    },
    units,
  );
  const edges = (nth: number): { x: TenthMm; y: TenthMm; width: TenthMm; length: TenthMm } => ({
    ...read,
    y: read.y + nth * (read.length + read.gap),
  });
  if (read.width < 1000) refuse('bed-too-small', { field: 'width', numbers: { least: 10 } });
  if (read.length < 1000) refuse('bed-too-small', { field: 'length', numbers: { least: 10 } });
  return Array.from({ length: typed.count }, (_, nth) => footprintOfEdges(edges(nth)));
}

/** Name a bed anew, or measure it again: the old measure stays with the ground's history. */
export const changeBed = mutation({
  name: 'change-bed',
  allow: canEnter,
  input: changeBedInput,
  write: async (context, input) => {
    const { tx, scope, today, note } = context;
    const open = await openBed({ db: tx, scope, today }, input.bedId);
    if (open.bed.retiredOn) refuse('bed-retired', { numbers: { name: open.bed.name } });
    await lockPlot(tx, scope, open.plot.id);
    const others = (await bedsOnGround(tx, scope, open.bed.frameId, today)).filter(({ id }) => id !== open.bed.id);
    if (others.some(({ name, plotId }) => plotId === open.plot.id && name === input.name))
      refuse('bed-name-taken', { field: 'name', numbers: { name: input.name } });
    const [footprint = open.bed.footprint] = laidOut({ ...input, count: 1, gap: '' }, [], scope.units);
    const isSame = JSON.stringify(footprint) === JSON.stringify(open.bed.footprint);
    const before = { name: open.bed.name, ...open.bed.footprint };
    if (isSame) await renameBed(tx, scope, open.bed.id, input.name);
    else checkPlace(footprint, open.plot, others);
    const typed = { width: input.width, length: input.length, x: input.x, y: input.y };
    const bedId = isSame
      ? open.bed.id
      : await replaceBed(context, open, [open.bed.id], { name: input.name, footprint, typed }, today);
    note({
      verb: 'changed',
      thing: 'bed',
      thingId: bedId,
      forHoldingId: open.holding?.id ?? null,
      before,
      after: { name: input.name, ...footprint },
    });
    await tellHolders(context, open);
    return { bedId };
  },
});

/** Take a bed out of use from a day; what stood there stays on record. */
export const retireBed = mutation({
  name: 'retire-bed',
  allow: canEnter,
  input: retireBedInput,
  write: async (context, { bedId, from }) => {
    const { tx, scope, today, note } = context;
    const open = await openBed({ db: tx, scope, today }, bedId);
    if (open.bed.retiredOn) refuse('bed-retired', { numbers: { name: open.bed.name } });
    await writeRetired(tx, scope, bedId, from < open.bed.fromOn ? open.bed.fromOn : from);
    note({
      verb: 'retired',
      thing: 'bed',
      thingId: bedId,
      forHoldingId: open.holding?.id ?? null,
      before: { name: open.bed.name },
      after: { from },
    });
    await tellHolders(context, open);
    return { plotId: open.plot.id };
  },
});

/** Split a bed in two from a day. */
export const splitBed = mutation({
  name: 'split-bed',
  allow: canEnter,
  input: splitBedInput,
  write: async (context, input) => {
    const { tx, scope, today, note } = context;
    const open = await openBed({ db: tx, scope, today }, input.bedId);
    if (open.bed.retiredOn) refuse('bed-retired', { numbers: { name: open.bed.name } });
    await lockPlot(tx, scope, open.plot.id);
    const others = (await bedsOnGround(tx, scope, open.bed.frameId, today)).filter(
      ({ id, plotId }) => id !== open.bed.id && plotId === open.plot.id,
    );
    const taken = new Set(others.map(({ name }) => name));
    if (taken.has(input.firstName))
      refuse('bed-name-taken', { field: 'firstName', numbers: { name: input.firstName } });
    if (taken.has(input.secondName) || input.secondName === input.firstName)
      refuse('bed-name-taken', { field: 'secondName', numbers: { name: input.secondName } });
    const { at } = readLengths({ at: { field: 'at', what: 'where the cut lies', text: input.at } }, scope.units);
    const atCm = Math.round(at / 100);
    const size = input.across === 'width' ? open.bed.footprint.widthCm : open.bed.footprint.lengthCm;
    if (atCm <= 0 || atCm >= size) refuse('cut-outside-bed', { field: 'at', numbers: { size } });
    const parts = splitFootprint(open.bed.footprint, input.across === 'width' ? 'x' : 'y', atCm);
    const from = input.from < open.bed.fromOn ? open.bed.fromOn : input.from;
    await writeRetired(tx, scope, open.bed.id, from);
    const place = { plotId: open.plot.id, frameId: open.bed.frameId, fromOn: from, typed: null };
    const ids = await createBeds(tx, scope, [
      { ...place, name: input.firstName, footprint: parts[0] },
      { ...place, name: input.secondName, footprint: parts[1] },
    ]);
    for (const id of ids) await noteBedLineage(tx, scope, [open.bed.id], id, from);
    note({
      verb: 'split',
      thing: 'bed',
      thingId: open.bed.id,
      forHoldingId: open.holding?.id ?? null,
      before: { name: open.bed.name },
      after: { into: ids, from },
    });
    await tellHolders(context, open);
    return { bedIds: ids };
  },
});

/** Join two beds that share a whole edge, from a day. */
export const joinBeds = mutation({
  name: 'join-beds',
  allow: canEnter,
  input: joinBedsInput,
  write: async (context, input) => {
    const { tx, scope, today, note } = context;
    const open = await openBed({ db: tx, scope, today }, input.bedId);
    const other = await openBed({ db: tx, scope, today }, input.otherId);
    await lockPlot(tx, scope, open.plot.id);
    const joined =
      open.bed.frameId === other.bed.frameId ? joinFootprints(open.bed.footprint, other.bed.footprint) : null;
    if (!joined || open.bed.retiredOn || other.bed.retiredOn || open.plot.id !== other.plot.id)
      refuse('beds-do-not-join', { field: 'otherId' });
    const from = [input.from, open.bed.fromOn, other.bed.fromOn].sort().at(-1) ?? input.from;
    const bedId = await replaceBed(
      context,
      open,
      [open.bed.id, other.bed.id],
      { name: input.name, footprint: joined, typed: null },
      from,
    );
    note({
      verb: 'joined',
      thing: 'bed',
      thingId: bedId,
      forHoldingId: open.holding?.id ?? null,
      before: { beds: [open.bed.name, other.bed.name] },
      after: { name: input.name, from },
    });
    await tellHolders(context, open);
    return { bedId };
  },
});

async function replaceBed(
  { tx, scope }: WriteContext,
  { plot }: OpenPlot,
  oldIds: readonly string[],
  bed: { name: string; footprint: Footprint; typed: Record<string, string> | null },
  from: WriteContext['today'],
): Promise<string> {
  for (const id of oldIds) await writeRetired(tx, scope, id, from);
  const [id = ''] = await createBeds(tx, scope, [{ ...bed, plotId: plot.id, frameId: plot.frameId, fromOn: from }]);
  await noteBedLineage(tx, scope, oldIds, id, from);
  return id;
}
