import 'server-only';
import { z } from 'zod';
import { changesByOthers } from '@/lib/data/audit';
import { bedsStanding } from '@/lib/data/bed';
import { bookingsOfHoldings } from '@/lib/data/booking';
import { cropsOf } from '@/lib/data/crop';
import { deliveriesOf, type DeliveryRecord } from '@/lib/data/delivery';
import { type HoldingOnDay, holdingsOfMember } from '@/lib/data/holding';
import { settingHistory } from '@/lib/data/setting';
import { plantingsIn } from '@/lib/data/planting';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type RuleChange, ruleChanges } from '@/lib/domain/catalogue/rule-changes';
import type { DeliveryState } from '@/lib/domain/delivery/steps';
import { overlap } from '@/lib/domain/ground/footprint';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { dayIn, instantIn } from '@/lib/platform/clock';
import { needsForDelivery } from '../deliveries/book-loads';
import { query, type ReadContext } from '../operation';
import { dueOfResidues, type ResidueDue } from '../residue/due-residue';
import { dueOfSeed, type SeedDue } from '../seed/due-seed';
import { dueOfSheets, type SheetDue } from '../sheets/due-sheets';
import type { HoldingNeed } from './holding-need';

/** One thing that wants doing. All of it is derived: done where it is done. */
export type Due =
  | {
      readonly code: 'book';
      readonly deliveryId: string;
      readonly holdingId: string;
      readonly name: string;
      readonly closesAt: Date;
      readonly need: HoldingNeed;
      readonly asked: number | null;
    }
  | {
      readonly code: 'collect';
      readonly deliveryId: string;
      readonly name: string;
      readonly loads: number;
      readonly loadUnit: LoadUnit;
      readonly share: number;
      readonly by: CalendarDate;
    }
  | { readonly code: 'draw-beds'; readonly plotId: string; readonly plotNumber: string }
  | {
      readonly code: 'record';
      readonly plotId: string;
      readonly plotNumber: string;
      readonly season: number;
      readonly beds: readonly string[];
      readonly isNext: boolean;
    }
  | { readonly code: 'run'; readonly deliveryId: string; readonly name: string; readonly step: string }
  | ResidueDue
  | SheetDue
  | SeedDue;

/** What wants doing this week, most pressing first. */
export const readWeek = query({
  name: 'read-week',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    const holdings = (await holdingsOfMember(db, scope, scope.memberId, today)).filter(({ plots }) => plots.length);
    const coming = await deliveriesOf(db, scope, context.now);
    const residues = await dueOfResidues(context, coming);
    const deliveries = await dueOfDeliveries(context, holdings, coming);
    const ground = await dueOfGround(context, holdings);
    return {
      rules: await rulesChanged(context),
      lately: await changedLately(context, holdings),
      due: [
        ...residues,
        ...deliveries,
        ...(await dueOfSheets(context, holdings)),
        ...(await dueOfSeed(context, holdings)),
        ...ground,
      ],
      today,
      timeZone: scope.timeZone,
      units: scope.units,
      holds: holdings.length > 0,
    };
  },
});

/** What the committee changed of the society's rules in the last weeks, or for the weeks to come. */
async function rulesChanged({ db, scope, today }: ReadContext): Promise<RuleChange[]> {
  const history = await settingHistory(db, scope, 'rules');
  const set = history.map(({ setAt, ...one }) => ({ ...one, at: setAt, setOn: dayIn(scope.timeZone, setAt) }));
  return ruleChanges(
    set.toSorted((a, b) => a.at.getTime() - b.at.getTime()),
    today,
  );
}

type Facts = { crop?: string; season?: number; bed?: string; name?: string; count?: number };

/** What the other holders, or the secretary for them, changed on the viewer's ground in the last fortnight. */
async function changedLately({ db, scope, today }: ReadContext, holdings: readonly HoldingOnDay[]) {
  const since = instantIn(scope.timeZone, `${addDays(today, -13)}T00:00`);
  const ids = holdings.map(({ id }) => id);
  const [changes, crops] = await Promise.all([changesByOthers(db, scope, ids, since), cropsOf(db, scope)]);
  return changes.map(({ id, at, by, thing, verb, before, after }) => {
    const facts = (after ?? before ?? {}) as Facts;
    return {
      id,
      at,
      by,
      verb,
      what: facts.crop
        ? (crops.get(facts.crop)?.name ?? 'bare ground')
        : facts.count
          ? `${facts.count} plantings`
          : `${thing} ${facts.name ?? ''}`.trim(),
      season: facts.season ?? null,
      bed: facts.bed ?? null,
    };
  });
}

const steps: Partial<Record<DeliveryState, string>> = {
  planned: 'open it for booking',
  closed: 'booking has closed; measure the heap when it comes',
  tipped: 'measured; share it out',
  shared: 'shared out; it can be collected',
  collecting: 'being collected; settle it when all is done',
};

async function dueOfDeliveries(
  context: ReadContext,
  holdings: readonly HoldingOnDay[],
  coming: readonly DeliveryRecord[],
): Promise<Due[]> {
  const { db, scope, today } = context;
  const due: Exclude<Due, ResidueDue | SheetDue | SeedDue>[] = [];
  const bookings = await bookingsOfHoldings(
    db,
    scope,
    holdings.map(({ id }) => id),
  );
  for (const delivery of coming) {
    const { id: deliveryId, name, state } = delivery;
    if (['open', 'shared', 'collecting'].includes(state)) {
      const needs = state === 'open' ? await needsForDelivery({ tx: db, scope, today }, delivery, holdings) : null;
      for (const holding of holdings) {
        const stands = bookings.get(deliveryId)?.find(({ holdingId }) => holdingId === holding.id);
        const need = needs?.get(holding.id);
        if (need)
          due.push({
            code: 'book',
            deliveryId,
            holdingId: holding.id,
            name,
            closesAt: delivery.closesAt,
            need,
            asked: stands?.asked ?? null,
          });
        const left = (stands?.share ?? 0) - (stands?.collectedLoads ?? 0);
        if (!needs && left > 0)
          due.push({
            code: 'collect',
            deliveryId,
            name,
            loads: left,
            loadUnit: delivery.loadUnit,
            share: stands?.share ?? 0,
            by: delivery.collectByOn,
          });
      }
    }
    // What is held waits for the decision, which stands by itself.
    const step = delivery.held && state === 'tipped' ? undefined : steps[state];
    if (step && canRunSociety(scope)) due.push({ code: 'run', deliveryId, name, step });
  }
  const order = { collect: 0, book: 1, run: 2, 'draw-beds': 3, record: 4 };
  return due.sort((a, b) => order[a.code] - order[b.code]);
}

async function dueOfGround({ db, scope, today }: ReadContext, holdings: readonly HoldingOnDay[]): Promise<Due[]> {
  const plots = holdings.flatMap((holding) => holding.plots);
  const year = Number(today.slice(0, 4));
  // From 1 October the next season is offered.
  const seasons = today.slice(5) >= '10-01' ? [year, year + 1] : [year];
  const beds = await bedsStanding(
    db,
    scope,
    today,
    today,
    plots.map(({ id }) => id),
  );
  const frames = [...new Set(beds.map(({ frameId }) => frameId))];
  const plantings = await plantingsIn(db, scope, await cropsOf(db, scope), { from: year, to: year + 1 }, frames);
  return plots.flatMap((plot): Due[] => {
    const own = beds.filter(({ plotId }) => plotId === plot.id);
    if (own.length === 0) return [{ code: 'draw-beds', plotId: plot.id, plotNumber: plot.number }];
    return seasons.flatMap((season): Due[] => {
      const missing = own.filter(
        (bed) =>
          !plantings.some(
            (one) =>
              one.frameId === bed.frameId &&
              one.firstSeason <= season &&
              one.lastSeason >= season &&
              overlap(one.footprint, bed.footprint),
          ),
      );
      return missing.length
        ? [
            {
              code: 'record',
              plotId: plot.id,
              plotNumber: plot.number,
              season,
              beds: missing.map(({ name }) => name),
              isNext: season > year,
            },
          ]
        : [];
    });
  });
}
