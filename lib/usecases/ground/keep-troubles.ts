import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { settingsOn } from '@/lib/data/setting';
import { createTrouble, retireTrouble as writeRetired, troubleById } from '@/lib/data/trouble';
import { troubleOf } from '@/lib/domain/catalogue/troubles';
import { overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { recordTroubleInput, retireTroubleInput } from '@/lib/schemas/ground/trouble';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { type OpenBed, openBed } from './open-bed';
import { partOf } from './place-planting';
import { tellHolders } from './tell-holders';

/** Record a trouble found on a bed or part of it. That ground has its longer break from then on. */
export const recordTrouble = mutation({
  name: 'record-trouble',
  allow: canEnter,
  input: recordTroubleInput,
  write: async (context, input) => {
    const { tx, scope, today, note } = context;
    const open = await openBed({ db: tx, scope, today }, input.bedId);
    const { troubleKey, certainty, foundOn, notes } = input;
    if (!troubleOf(troubleKey)) refuse('trouble-unknown', { field: 'troubleKey' });
    if (foundOn > today) refuse('found-in-the-future', { field: 'foundOn' });
    const footprint = partOf(open.bed.footprint, input, scope.units);
    const place = { frameId: open.bed.frameId, holdingId: open.holding?.id ?? null, footprint };
    const id = await createTrouble(tx, scope, { ...place, troubleKey, certainty, foundOn, notes });
    const after = { trouble: troubleKey, certainty, foundOn, bed: open.bed.name, ...footprint };
    note({ verb: 'recorded', thing: 'trouble', thingId: id, forHoldingId: open.holding?.id ?? null, after });
    await tellHolders(context, open);
    return { bedId: open.bed.id };
  },
});

/** Take a record of a trouble back, as a mistake. Waiting it out needs no record: the break ends by itself. */
export const retireTrouble = mutation({
  name: 'retire-trouble',
  allow: canEnter,
  input: retireTroubleInput,
  write: async (context, { troubleId }) => {
    const { tx, scope, today, now, note } = context;
    const trouble = await troubleById(tx, scope, await settingsOn(tx, scope, today), troubleId);
    if (!trouble) throw new NotFound();
    const open = await bedOn(context, trouble);
    await writeRetired(tx, scope, troubleId, now);
    const before = { trouble: trouble.troubleKey, foundOn: trouble.foundOn, bed: open.bed.name };
    note({ verb: 'taken back', thing: 'trouble', thingId: troubleId, forHoldingId: open.holding?.id ?? null, before });
    await tellHolders(context, open);
    return { bedId: open.bed.id };
  },
});

// Whoever keeps a bed on that ground today keeps the record too.
async function bedOn(
  { tx, scope, today }: WriteContext,
  trouble: { frameId: string; footprint: Parameters<typeof overlap>[0] },
): Promise<OpenBed> {
  const beds = await bedsStanding(tx, scope, today, today);
  const bed = beds.find((one) => one.frameId === trouble.frameId && overlap(one.footprint, trouble.footprint));
  if (!bed) throw new NotFound();
  return openBed({ db: tx, scope, today }, bed.id);
}
