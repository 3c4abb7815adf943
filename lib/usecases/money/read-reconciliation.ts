import 'server-only';
import { z } from 'zod';
import { accountHolders } from '@/lib/data/account-holder';
import { deliveriesOf, deliveryById, type DeliveryRecord } from '@/lib/data/delivery';
import { entriesOf, holdingOf, type LedgerRecord } from '@/lib/data/ledger';
import { balancesOn, chargedAfter } from '@/lib/data/ledger-sums';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import type { Account } from '@/lib/domain/ledger/account';
import { outstandingOf } from '@/lib/domain/ledger/outstanding';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { seasonAsked } from '@/lib/schemas/money/ledger';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { accountNames } from './account-names';
import { splitDelivery } from './split-delivery';

/** A settled delivery to the penny: its price, each holding's part with its reason, what is paid of it, and every entry of it. */
export const readReconciliation = query({
  name: 'read-reconciliation',
  allow: canReadCommitteePapers,
  input: z.object({ deliveryId: z.uuid() }),
  read: async (context, { deliveryId }) => {
    const { db, scope, now } = context;
    const delivery = await deliveryById(db, scope, deliveryId, now);
    if (delivery?.state !== 'settled') throw new NotFound();
    const entries = await entriesOf(db, scope, { deliveryIds: [deliveryId] });
    const [sums, names] = [await reconciled(context, delivery, entries), await accountNames(context)];
    return { ...sums, entries, names, keeps: canKeepMoney(scope) };
  },
});

/** A season's settled deliveries to the penny, by the day on which they came. */
export const readSeasonMoney = query({
  name: 'read-season-money',
  allow: canReadCommitteePapers,
  input: seasonAsked,
  read: async (context, asked) => {
    const { db, scope, now, today } = context;
    const settled = (await deliveriesOf(db, scope, now)).filter(({ state }) => state === 'settled');
    const seasons = [...new Set([yearOf(today), ...settled.map(({ arrivesOn }) => yearOf(arrivesOn))])];
    const season = asked.season ?? yearOf(today);
    const ofSeason = settled.filter(({ arrivesOn }) => yearOf(arrivesOn) === season).toReversed();
    const all = await entriesOf(db, scope, { deliveryIds: ofSeason.map(({ id }) => id) });
    const rows = await Promise.all(
      ofSeason.map((delivery) =>
        reconciled(
          context,
          delivery,
          all.filter(({ deliveryId }) => deliveryId === delivery.id),
        ),
      ),
    );
    return { season, seasons: seasons.sort((one, other) => other - one), rows };
  },
});

const sum = (numbers: readonly number[]) => numbers.reduce((before, one) => before + one, 0);

async function reconciled(context: ReadContext, delivery: DeliveryRecord, entries: readonly LedgerRecord[]) {
  const { db, scope } = context;
  const { id, name, arrivesOn, supplier, heapLoads, collectedLoads, loadUnit } = delivery;
  const standing = entries.filter(({ kind, reversedBy }) => kind !== 'correction' && reversedBy === null);
  const onTo = (kind: string) =>
    sum(
      standing
        .filter((entry) => entry.kind === kind)
        .flatMap(({ lines }) => lines.map(({ minor }) => Math.max(0, minor))),
    );
  const purchases: Account = `purchases:${id}`;
  const parts = await partsOf(context, id, standing.find(({ kind }) => kind === 'charge') ?? null);
  return {
    delivery: { id, name, arrivesOn, supplier, heapLoads: heapLoads ?? 0, collectedLoads, loadUnit },
    priceMinor: onTo('purchase'),
    chargedMinor: onTo('charge'),
    writtenOffMinor: onTo('transfer'),
    /** What is neither charged on nor written off. */
    leftMinor: (await balancesOn(db, scope, [purchases])).get(purchases) ?? 0,
    supplierPaidMinor: onTo('payment'),
    parts,
    outstandingMinor: sum(parts.map(({ outstandingMinor }) => outstandingMinor)),
  };
}

async function partsOf(context: ReadContext, deliveryId: string, charge: LedgerRecord | null) {
  if (!charge) return [];
  const { db, scope, today } = context;
  const charged = charge.lines.flatMap(({ account, minor }) => {
    const holdingId = holdingOf(account);
    return holdingId ? [{ holdingId, account, minor }] : [];
  });
  const holdingIds = charged.map(({ holdingId }) => holdingId);
  const [holders, split, newer, balances] = await Promise.all([
    accountHolders(db, scope, today, { holdingIds }),
    splitDelivery(db, scope, deliveryId, sum(charged.map(({ minor }) => minor))),
    chargedAfter(db, scope, charge.id),
    balancesOn(
      db,
      scope,
      charged.map(({ account }) => account),
    ),
  ]);
  const chargedTo = new Map(charged.map((one) => [one.holdingId, one]));
  const shares = new Map(split.shares.map((share) => [share.holdingId, share]));
  return holders.flatMap((holder) => {
    const { holdingId } = holder;
    const [line, share] = [chargedTo.get(holdingId), shares.get(holdingId)];
    if (!line) return [];
    return [
      {
        holder,
        minor: line.minor,
        /** The same part worked out again from the loads and the lot, with its reason. */
        again: share
          ? { ...share, loadUnit: split.loadUnit, allLoads: split.allLoads, priceMinor: split.priceMinor }
          : null,
        outstandingMinor: outstandingOf(line.minor, newer.get(holdingId) ?? 0, balances.get(line.account) ?? 0),
      },
    ];
  });
}
