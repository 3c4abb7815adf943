import 'server-only';
import type { z } from 'zod';
import { appendResult, blockOfGround, type GroundRecord } from '@/lib/data/trial-block';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { formatArea, readArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import { giveResultInput } from '@/lib/schemas/trials/trial';
import { typedAmount } from '../harvest/typed-amount';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { harvestsOn } from './harvests-on';
import { openLaidOut } from './keep-block';

type Typed = z.output<typeof giveResultInput>;
type Given = { readonly amount: number; readonly areaCm2: number };

/** Confirm what a piece of ground gave, or correct it while the report is closed; what was confirmed before is kept. */
export const giveResult = mutation({
  name: 'give-trial-result',
  allow: canEnter,
  input: giveResultInput,
  write: async (context, input) => {
    const { tx, scope, now, note } = context;
    const open = await openLaidOut(context, await blockOfGround(tx, scope, input.groundId));
    const { trial, block, holding } = open;
    const ground = block.grounds.find(({ id }) => id === input.groundId);
    if (!ground) throw new NotFound();
    const given =
      input.source === 'typed'
        ? { amount: typedAmount(input.amount, trial.measure, scope.units), areaCm2: typedGround(input, ground, scope) }
        : await fromRecords(context, open, ground, input.amount);
    await appendResult(tx, scope, ground.id, { source: input.source, ...given, at: now });
    // How much it was is nobody's but theirs until the report opens, and stays out of the book.
    const verb = ground.results.length ? 'corrected' : 'confirmed';
    note({ verb, thing: 'trial result', thingId: trial.id, forHoldingId: holding.id });
    return { trialId: trial.id };
  },
});

async function fromRecords(
  { tx, scope }: WriteContext,
  { trial, block }: Awaited<ReturnType<typeof openLaidOut>>,
  ground: GroundRecord,
  shown: string,
): Promise<Given> {
  const found = await harvestsOn({ db: tx, scope }, trial, block, ground);
  if (found.is !== 'found') return refuse('trial-no-harvests');
  if (String(found.amount) !== shown) return refuse('trial-records-changed');
  return { amount: found.amount, areaCm2: found.areaCm2 };
}

/** The ground that it came from: the whole piece, where no smaller one was typed. */
function typedGround({ area }: Typed, { footprint }: GroundRecord, { units }: { units: Units }): number {
  const all = areaCm2(footprint);
  if (area.trim() === '') return all;
  const typed = readArea(area, units);
  if (typed === null || typed < 1) return refuse('trial-ground-wrong', { field: 'area' });
  // Typed as it is shown, it is rounded to a tenth of a square metre.
  if (typed > all + 500) refuse('trial-ground-larger', { field: 'area', numbers: { most: formatArea(all, units) } });
  return Math.min(typed, all);
}
