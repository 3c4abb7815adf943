import 'server-only';
import { z } from 'zod';
import { harvestsForLots } from '@/lib/data/lot-harvest';
import { lotsOf, type LotRecord } from '@/lib/data/store-lot';
import { placesOf } from '@/lib/data/store-place';
import { curingsOf } from '@/lib/domain/catalogue/curings';
import { storageLivesOf } from '@/lib/domain/catalogue/storage-lives';
import { canEnter } from '@/lib/domain/policy/standing';
import { curingClock } from '@/lib/domain/store/curing-clock';
import { firstToUse } from '@/lib/domain/store/first-to-use';
import { lotNow } from '@/lib/domain/store/go-over';
import { lifePrior } from '@/lib/domain/store/life-prior';
import { roundsDue } from '@/lib/domain/store/rounds-due';
import { mustNotStandBeside } from '@/lib/domain/store/stand-apart';
import { tooColdFor } from '@/lib/domain/store/too-cold';
import { query } from '../operation';
import { lotSeen } from './open-store';
import { shownLot } from './shown-lot';

/** One lot: what there is of it, its goings over, its curing, what it is kept from, and what is published of its kind. */
export const readLot = query({
  name: 'read-lot',
  allow: canEnter,
  input: z.object({ lotId: z.uuid() }),
  read: async (context, { lotId }) => {
    const { db, scope, today } = context;
    const { lot, holding } = await lotSeen(context, lotId);
    const [lots, places, harvests] = await Promise.all([
      lotsOf(db, scope, [holding.id]),
      placesOf(db, scope, [holding.id]),
      harvestsForLots(db, scope, lot.harvestId ? [lot.harvestId] : [], [holding.id]),
    ]);
    const names = new Map(holding.members.map(({ id, name }) => [id, name]));
    return {
      ...shownLot(lot),
      ...{ today, units: scope.units, holdingId: holding.id, placeTenthC: lot.placeTenthC },
      ...{ pieceG: lot.pieceG, goingOverDays: lot.goingOverDays, source: lot.source, notes: lot.notes },
      harvest: harvests[0] ?? null,
      goings: lot.goingsOver.map(({ byMemberId, ...going }) => ({ ...going, by: names.get(byMemberId) ?? null })),
      clock: lot.curingFrom ? curingClock(lot.keepingKey, lot.curingFrom, lot.curedOn ?? today) : null,
      useFirst: firstToUse([lot], today)[0] ?? null,
      round: roundsDue([lot], today)[0] ?? null,
      warnings: warningsFor(lot, lots),
      published: publishedOf(lot),
      places: places.map(({ id, name, kind }) => ({ id, name, kind })),
    };
  },
});

/** What is wrong with where a lot stands: what stands beside it, and how cold it gets. */
function warningsFor(lot: LotRecord, lots: readonly LotRecord[]) {
  if (lotNow(lot).sound === 0) return { apart: [], warmth: [] };
  const held = lots.filter((one) => lotNow(one).sound > 0);
  const nameOf = new Map(held.map((one) => [one.id, { id: one.id, keepingKey: one.keepingKey }]));
  const apart = mustNotStandBeside(held)
    .filter(({ lotId, besideId }) => lotId === lot.id || besideId === lot.id)
    .map((finding) => ({ ...finding, harmed: nameOf.get(finding.lotId), beside: nameOf.get(finding.besideId) }));
  return { apart, warmth: lot.placeTenthC === null ? [] : tooColdFor(lot.keepingKey, lot.placeTenthC) };
}

function publishedOf({ keepingKey, condition, placeTenthC }: LotRecord) {
  const { leastDays, mostDays, reasons } = lifePrior(keepingKey, condition, placeTenthC);
  return {
    lives: storageLivesOf(keepingKey),
    curings: curingsOf(keepingKey),
    expected: { leastDays, mostDays, reasons },
  };
}

export type ReadLot = Awaited<ReturnType<typeof readLot.run>>;
