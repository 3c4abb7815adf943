import 'server-only';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { type HeapLookRecord, newestLooks } from '@/lib/data/heap-look';
import { residueTestsOf } from '@/lib/data/residue-test';
import { type CalendarDate, daysBetween } from '@/lib/domain/calendar/calendar-date';
import { shrinkageOf } from '@/lib/domain/catalogue/heap-shrinkage';
import { type Material, materialOf } from '@/lib/domain/catalogue/materials';
import { type LoadsBetween, leftOnHeap } from '@/lib/domain/delivery/left-on-heap';
import { dayIn } from '@/lib/platform/clock';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import type { ReadContext } from '../operation';
import { shownTest } from '../residue/shown-test';

/** What is left of a settled delivery: when that was last known and how, and what has become of it since. */
export type OldHeap = LoadsBetween & {
  readonly id: string;
  readonly name: string;
  readonly material: Material;
  readonly barrowLoadG: number;
  readonly dropPoint: string | null;
  readonly known: { readonly loads: number; readonly on: CalendarDate; readonly by: 'count' | 'look' };
  readonly shrinks: ReturnType<typeof shrinkageOf>;
  /** A residue test of it shows symptoms: it is shown, and counted for nothing. */
  readonly isDoubted: boolean;
};

/** A month of a heap's age, as near as anybody knows it [days]. */
const monthDays = 30;

/** The old heaps of a site: what was not collected of settled deliveries, by the newest look or else by the count. */
export async function readOldHeaps(context: ReadContext, deliveries: readonly DeliveryRecord[]): Promise<OldHeap[]> {
  const { db, scope, today } = context;
  const settled = deliveries.filter(({ state }) => state === 'settled');
  const looks = await newestLooks(
    db,
    scope,
    settled.map(({ id }) => id),
  );
  const heaps = settled.flatMap((one) => oldHeap(context, one, looks.get(one.id)));
  const tests = heaps.length ? await residueTestsOf(db, scope, 'own-and-deliveries') : [];
  const shown = tests.map((test) => shownTest(scope, test, today));
  const doubted = new Set(
    shown.flatMap(({ deliveryId, judged }) => (judged.verdict === 'symptoms' ? [deliveryId] : [])),
  );
  return heaps.map((heap) => ({ ...heap, isDoubted: doubted.has(heap.id) }));
}

function oldHeap(
  { scope, today }: ReadContext,
  one: DeliveryRecord,
  look?: HeapLookRecord,
): Omit<OldHeap, 'isDoubted'>[] {
  const material = materialOf(one.materialKey);
  const known = look
    ? {
        loads: Math.max(0, look.loads - (one.collectedLoads - look.collectedLoads)),
        on: dayIn(scope.timeZone, look.at),
        by: 'look' as const,
      }
    : { loads: (one.heapLoads ?? 0) - one.collectedLoads, on: one.arrivesOn, by: 'count' as const };
  if (!material || known.loads === 0) return [];
  const ageMonths = ageWhenKnown(one, known.on);
  const days = Math.max(0, daysBetween(known.on, today));
  return [
    {
      ...{ id: one.id, name: one.name, dropPoint: one.dropPoint, material, known },
      barrowLoadG: loadMassG(one),
      shrinks: shrinkageOf(material.kind, ageMonths),
      ...leftOnHeap({ loads: known.loads, days, kind: material.kind, ageMonths }),
    },
  ];
}

// Its age on arrival and what it has lain since; of an unknown age until it has lain a year.
function ageWhenKnown({ ageMonths, arrivesOn }: DeliveryRecord, on: CalendarDate): number | null {
  const lain = Math.floor(Math.max(0, daysBetween(arrivesOn, on)) / monthDays);
  if (ageMonths === null) return lain >= 12 ? lain : null;
  return ageMonths + lain;
}
