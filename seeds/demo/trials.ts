import { randomUUID } from 'node:crypto';
import { bedsStanding } from '@/lib/data/bed';
import { db, inTransaction } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { createTrial, type NewTrial } from '@/lib/data/trial';
import { createBlock } from '@/lib/data/trial-block';
import { addDays, type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { commitmentOf } from '@/lib/domain/sharing/lot';
import { pieceOfBed } from '@/lib/domain/trial/piece-of-bed';
import { drawLotBytes } from '@/lib/platform/secret';
import type { Caller } from '@/lib/usecases/operation';
import { drawTrials } from '@/lib/usecases/trials/draw-trial';
import { giveResult } from '@/lib/usecases/trials/give-result';
import { leaveTrial, treatBlock } from '@/lib/usecases/trials/keep-block';
import { readTrial } from '@/lib/usecases/trials/read-trials';
import type { Chance } from '../chance';
import { done } from './done';

/** Who joins: with the two halves of a bed of a plot of theirs. */
export type Grower = {
  readonly caller: Caller;
  readonly memberId: string;
  readonly holdingId: string;
  readonly plotId: string;
};

/** A trial of this season that is reported, one plot of which dropped out; and one of the next that is laid out. */
export async function loadTrials(
  proposerId: string,
  growers: readonly Grower[],
  chance: Chance,
  today: CalendarDate,
): Promise<void> {
  const year = yearOf(today);
  const common = { measure: 'grams', leastPlots: 4, joinByOn: addDays(today, -1) } as const;
  const manured = await joined(proposerId, growers, today, {
    ...common,
    question: 'Do onions gain by manure the autumn before?',
    cropKey: 'onion',
    season: year,
    treatmentA:
      'Rotted manure dug in the autumn before, one barrow-load on 6 m²; sets in April, 10 cm apart, rows 30 cm.',
    treatmentB: 'Dug over on the same day, no manure; sets as in A.',
    resultsByOn: addDays(today, 21),
  });
  await joined(proposerId, growers.slice(0, 5), today, {
    ...common,
    question: 'Do leeks under straw grow heavier?',
    cropKey: 'leek',
    season: year + 1,
    treatmentA: 'Straw between the rows from June on, a hand deep.',
    treatmentB: 'No straw; hoed as often as it needs.',
    resultsByOn: `${year + 1}-11-30` as CalendarDate,
  });
  await drawTrials();
  const [last] = growers.slice(-1);
  for (const grower of growers) await bringIn(manured, grower, chance, { today, dropsOut: grower === last });
}

// As if joining had opened some weeks ago: nobody can wait for that here.
async function joined(proposerId: string, growers: readonly Grower[], today: CalendarDate, trial: NewTrial) {
  const at = new Date(`${addDays(today, -30)}T10:00:00Z`);
  const bytesHex = drawLotBytes();
  const proposer = await openScopeOfMember(db(), proposerId);
  const lot = { bytesHex, commitment: commitmentOf(bytesHex), at };
  const trialId = await inTransaction((tx) => createTrial(tx, proposer, trial, lot));
  for (const { memberId, holdingId, plotId } of growers) {
    const scope = await openScopeOfMember(db(), memberId);
    const beds = await bedsStanding(db(), scope, today, today, [plotId]);
    const bed = beds[trial.season % beds.length];
    if (!bed) throw new Error('a plot without beds joins no trial');
    const { id: bedId, frameId, footprint } = bed;
    const half = (piece: 'first' | 'second') => ({
      frameId,
      bedId,
      piece,
      footprint: pieceOfBed(footprint, piece),
    });
    const block = { trialId, plotId, holdingId, joinedAt: new Date(at.getTime() + 86_400_000) };
    await inTransaction((tx) => createBlock(tx, scope, block, [half('first'), half('second')]));
  }
  return trialId;
}

async function bringIn(
  trialId: string,
  { caller }: Grower,
  chance: Chance,
  { today, dropsOut }: { today: CalendarDate; dropsOut: boolean },
): Promise<void> {
  const once = <T extends object>(typed: T) => ({ writeId: randomUUID(), ...typed });
  const [block] = (await readTrial.run(caller, { trialId })).mine;
  const blockId = block?.id ?? '';
  if (dropsOut) {
    await done(leaveTrial.run(caller, once({ blockId, why: 'The pigeons had one half of it' })));
    return;
  }
  await done(treatBlock.run(caller, once({ blockId, treatedOn: today })));
  const ground = 2.2 + 1.6 * chance.next();
  for (const { id, treatment, areaCm2 } of block?.grounds ?? []) {
    const kgPerM2 = ground + (treatment === 'A' ? 0.35 : 0) + 0.6 * (chance.next() - 0.5);
    const amount = `${Math.round((kgPerM2 * areaCm2) / 10_000 / 0.05) * 50} g`;
    await done(giveResult.run(caller, once({ groundId: id, source: 'typed', amount, sure: 'yes' })));
  }
}
