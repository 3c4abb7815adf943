import 'server-only';
import type { HoldingOnDay } from '@/lib/data/holding';
import { packetsOf, type SeedPacketRecord } from '@/lib/data/seed-packet';
import { type OrderLine, orderList } from '@/lib/domain/seed/order-list';
import { massOfSeeds, type SeedMass } from '@/lib/domain/seed/seed-mass';
import type { ReadContext } from '../operation';
import { type PlantingLine, seedNeeds } from './seed-needs';

export type SetsLine = { readonly cropKey: string; readonly variety: string | null; readonly sets: number };

/** What a holding needs in a season, what its tin holds, and what is to order. */
export type SeedList = {
  readonly plantings: readonly PlantingLine[];
  readonly packets: readonly SeedPacketRecord[];
  readonly lines: readonly (OrderLine & { readonly mass: SeedMass | null })[];
  /** Sets, cloves and tubers are bought each year, and kept in no tin. */
  readonly sets: readonly SetsLine[];
};

/** The order list of a holding for a season. What is in the ground needs nothing; what was packed later is no help then. */
export async function listOf(
  context: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holding: HoldingOnDay,
  season: number,
): Promise<SeedList> {
  const [plantings, tin] = [
    await seedNeeds(context, holding, season),
    await packetsOf(context.db, context.scope, [holding.id]),
  ] as const;
  const open = plantings.filter(({ isInGround }) => !isInGround);
  const needs = open.flatMap(({ cropKey, variety, need }) =>
    need?.from === 'seed' ? [{ cropKey, variety, seeds: need.seeds }] : [],
  );
  const packets = tin.filter(({ packedYear }) => packedYear === null || packedYear <= season);
  const inTin = packets.map(({ germinationPercent: testedPercent, ...packet }) => ({ ...packet, testedPercent }));
  const lines = orderList(needs, inTin, season).map((line) => ({
    ...line,
    mass: massOfSeeds(line.cropKey, line.toOrder),
  }));
  return { plantings, packets: tin, lines, sets: setsOf(open) };
}

function setsOf(plantings: readonly PlantingLine[]): SetsLine[] {
  const sums = new Map<string, SetsLine>();
  for (const { cropKey, variety, need } of plantings) {
    if (need?.from !== 'sets') continue;
    const key = JSON.stringify([cropKey, variety]);
    sums.set(key, { cropKey, variety, sets: (sums.get(key)?.sets ?? 0) + need.sets });
  }
  return [...sums.values()].sort((one, other) => (one.cropKey < other.cropKey ? -1 : 1));
}
