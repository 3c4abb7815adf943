import 'server-only';
import type { BookingRecord } from '@/lib/data/booking';
import { byNumber } from '@/lib/data/holding';
import { loadMillionths } from '@/lib/domain/sharing/claim';
import type { ShareOut, ShareReason } from '@/lib/domain/sharing/share-out';
import type { ShareOutInputs } from '@/lib/domain/sharing/work-again';
import type { QueueHolding } from './queue-holdings';

/** One line of the shares: which plots, what was asked, needed and given, and why. No names, and no ids of members. */
export type QueueLine = QueueHolding & {
  readonly bookingId: string;
  readonly holdingId: string;
  /** What counts: where a share was given up, what was collected of it. */
  readonly asked: number;
  /** When booking closed, or when it came late and was not lowered since. */
  readonly askedFirst: number;
  readonly need: number;
  readonly share: number;
  readonly dueMillionths: number;
  readonly creditBeforeMillionths: number;
  readonly creditAfterMillionths: number;
  readonly reason: ShareReason;
  readonly collected: number;
  readonly beyond: number;
  readonly gaveUp: boolean;
  /** Its place on the waiting list, from 0; null for who was in time. */
  readonly late: number | null;
};

type Given = {
  readonly bookings: readonly BookingRecord[];
  readonly inputs: ShareOutInputs;
  readonly reckoned: ShareOut;
  /** Show what was written down when it was confirmed, not what is reckoned now. */
  readonly confirmed: boolean;
  readonly holdingOf: (holdingId: string) => QueueHolding;
};

/** The lines of a share-out, by plot number; those whose plots nobody knows come last. */
export function queueLines({ bookings, inputs, reckoned, confirmed, holdingOf }: Given): QueueLine[] {
  const claims = new Map(inputs.claims.map((claim) => [claim.id, claim]));
  const frozen = new Map(inputs.frozen.map(({ id, asked }) => [id, asked]));
  const shares = new Map(reckoned.shares.map((share) => [share.id, share]));
  const lines = bookings.flatMap((booking): QueueLine[] => {
    const [claim, share] = [claims.get(booking.id), shares.get(booking.id)];
    if (!claim || !share) return [];
    const given = confirmed ? asWritten(booking, share) : reckonedOnly(share);
    return [
      {
        ...holdingOf(booking.holdingId),
        ...factsOf(booking),
        ...given,
        askedFirst: frozen.get(booking.id) ?? booking.asked,
        creditBeforeMillionths: claim.creditMillionths,
        creditAfterMillionths: claim.creditMillionths + given.dueMillionths - given.share * loadMillionths,
        late: claim.late ?? null,
      },
    ];
  });
  return lines.toSorted(byPlots);
}

function factsOf({ id, holdingId, asked, needLoads, collectedLoads, beyondLoads, gaveUp }: BookingRecord) {
  return {
    ...{ bookingId: id, holdingId, asked, gaveUp },
    ...{ need: needLoads, collected: collectedLoads, beyond: beyondLoads },
  };
}

type Awarded = Pick<QueueLine, 'share' | 'dueMillionths' | 'reason'>;

function asWritten(written: Pick<BookingRecord, 'share' | 'dueMillionths' | 'reason'>, reckoned: Awarded): Awarded {
  return {
    share: written.share ?? 0,
    dueMillionths: written.dueMillionths ?? 0,
    reason: written.reason ?? reckoned.reason,
  };
}

function reckonedOnly({ share, dueMillionths, reason }: Awarded): Awarded {
  return { share, dueMillionths, reason };
}

function byPlots({ plots: [a] }: QueueLine, { plots: [b] }: QueueLine): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return byNumber(a, b);
}
