import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { type HoldingOnDay, holdingsOfMember } from '@/lib/data/holding';
import { packetsOf } from '@/lib/data/seed-packet';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import { plantedCrops } from '@/lib/domain/catalogue/spacings';
import { canEnter } from '@/lib/domain/policy/standing';
import { packetState } from '@/lib/domain/seed/packet-state';
import { query, type ReadContext } from '../operation';
import { comingSeason } from './coming-season';
import { listOf } from './list-of';

const asked = z.object({
  season: z.coerce.number().int().min(1900).max(2199).nullish().catch(null),
  holdingId: z.uuid().nullish().catch(null),
});

/** Holdings by their plots, for choosing between them. */
function titled({ id, plots }: HoldingOnDay) {
  return { id, plots: plots.map(({ number }) => number) };
}

async function ownHoldings({ db, scope, today }: ReadContext, holdingId: string | null | undefined) {
  const holdings = (await holdingsOfMember(db, scope, scope.memberId, today)).filter(({ plots }) => plots.length);
  const at = holdings.find(({ id }) => id === holdingId) ?? holdings[0] ?? null;
  return { holding: at, holdings: holdings.map(titled) };
}

/** What the planned season needs of seed and sets, what the tin holds of it, and what is to order. */
export const readSeed = query({
  name: 'read-seed',
  allow: canEnter,
  input: asked,
  read: async (context, { season: wanted, holdingId }) => {
    const { db, scope, today } = context;
    const season = wanted ?? comingSeason(today);
    const { holding, holdings } = await ownHoldings(context, holdingId);
    const list = holding ? await listOf(context, holding, season) : { plantings: [], packets: [], lines: [], sets: [] };
    const crops = await cropsOf(db, scope);
    const named = <Line extends { readonly cropKey: string }>(line: Line) => ({
      ...line,
      cropName: crops.get(line.cropKey)?.name ?? line.cropKey,
    });
    return {
      ...{ season, today, thisYear: yearOf(today), holdings, units: scope.units },
      holding: holding && titled(holding),
      plantings: list.plantings,
      lines: list.lines.map(named),
      sets: list.sets.map(named),
    };
  },
});

/** The tin: every packet of the holding, and how far it may be relied on in the coming season. */
export const readTin = query({
  name: 'read-seed-tin',
  allow: canEnter,
  input: asked.omit({ season: true }),
  read: async (context, { holdingId }) => {
    const { db, scope, today } = context;
    const season = comingSeason(today);
    const { holding, holdings } = await ownHoldings(context, holdingId);
    const crops = await cropsOf(db, scope);
    const packets = holding ? await packetsOf(db, scope, [holding.id], { usedUp: true }) : [];
    const shown = packets.map(({ wantId, holdingId: _, ...packet }) => ({
      ...packet,
      cropName: crops.get(packet.cropKey)?.name ?? packet.cropKey,
      isOrdered: wantId !== null,
      state: stateIn(packet, season),
    }));
    const planted = new Set<string>(plantedCrops.cropKeys);
    const choices = [...crops.values()].filter(({ key, binomial }) => !planted.has(key) && binomial !== null);
    return {
      ...{ season, holdings, thisYear: yearOf(today) },
      holding: holding && titled(holding),
      packets: shown.filter(({ usedUpAt }) => usedUpAt === null),
      usedUp: shown.filter(({ usedUpAt }) => usedUpAt !== null),
      crops: choices.map(({ key, name }) => ({ key, name })).sort((a, b) => (a.name < b.name ? -1 : 1)),
    };
  },
});

type Kept = {
  readonly cropKey: string;
  readonly packedYear: number | null;
  readonly germinationPercent: number | null;
};

// What is packed for the year after is good by then.
function stateIn({ cropKey, packedYear, germinationPercent }: Kept, season: number) {
  return packetState(cropKey, packedYear, Math.max(season, packedYear ?? season), germinationPercent);
}
