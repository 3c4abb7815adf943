import type { Season } from '../calendar/season-of';
import { wholeFrom } from '../quantity/checked';
import { countsInHand, type PacketState, packetState } from './packet-state';
import { germinationOf } from './seeds-wanted';

/** Seed that a planting of the planned season needs; a variety, or any. */
export type SeedNeed = { readonly cropKey: string; readonly variety: string | null; readonly seeds: number };

/** A packet in the tin, with the seeds that are left in it. */
export type SeedPacket = SeedNeed & {
  readonly id: string;
  readonly packedYear: number | null;
  /** From a test of one's own [percent]. */
  readonly testedPercent?: number | null;
};

/** One line of the order: what is needed, what there is, what is to be ordered. */
export type OrderLine = {
  readonly cropKey: string;
  readonly variety: string | null;
  readonly needed: number;
  readonly inHand: number;
  readonly toOrder: number;
  /** The packets of the crop and variety, with their states; those that don't count are here too. */
  readonly packets: readonly { readonly id: string; readonly counts: number; readonly state: PacketState }[];
};

/**
 * What seed to order: what is needed less what sound seed there is, for each crop and variety.
 *
 * Method: needs of one crop and variety are summed. Packets of a variety serve it first; what they leave, and packets of no named
 * variety, serve the needs that name none. A named variety is served by nothing else. Seed that was tested counts by what came up, over
 * what is reckoned to (`germinationOf`), rounded down, and never for more than there is.
 *
 * @param needs    whole seeds ≥ 0
 * @param packets  whole seeds ≥ 0, unique ids
 * @param season   in which it is all sown
 * @returns        one line for each crop and variety that is needed, by crop and variety, any variety last;
 *                 toOrder = needed − inHand ≥ 0, and no seed serves twice
 * @throws RangeError on numbers and years that are none, on a packet that stands twice
 * @source         as `packetState`
 * @example        258 onion seeds needed, 100 in a packet of this year, 500 of three years ago → 158 to order
 */
export function orderList(needs: readonly SeedNeed[], packets: readonly SeedPacket[], season: Season): OrderLine[] {
  if (new Set(packets.map(({ id }) => id)).size < packets.length) throw new RangeError('a packet stands twice');
  const tin = packets.map(({ id, cropKey, variety, seeds, packedYear, testedPercent = null }) => {
    const state = packetState(cropKey, packedYear, season, testedPercent);
    const worth = testedPercent === null ? wholeFrom(0, seeds) : worthOf(seeds, testedPercent, cropKey);
    const counts = countsInHand(state) ? worth : 0;
    return { id, cropKey, variety, state, counts, left: counts };
  });
  return summed(needs).map(({ cropKey, variety, seeds: needed }) => {
    const serving = tin.filter(
      (packet) => packet.cropKey === cropKey && (variety ?? packet.variety) === packet.variety,
    );
    let open = needed;
    for (const packet of serving) {
      const taken = Math.min(open, packet.left);
      packet.left -= taken;
      open -= taken;
    }
    return {
      cropKey,
      variety,
      needed,
      inHand: needed - open,
      toOrder: open,
      packets: serving.map(({ id, counts, state }) => ({ id, counts, state })),
    };
  });
}

function worthOf(seeds: number, testedPercent: number, cropKey: string): number {
  if (wholeFrom(0, testedPercent) > 100) throw new RangeError(`at most all of it came up: ${testedPercent}`);
  return Math.min(
    seeds,
    Math.floor(wholeFrom(0, wholeFrom(0, seeds) * testedPercent) / germinationOf(cropKey).percent),
  );
}

// By crop, then by variety; whatever takes any comes last of its crop.
function summed(needs: readonly SeedNeed[]): SeedNeed[] {
  const sums = new Map<string, SeedNeed>();
  for (const { cropKey, variety, seeds } of needs) {
    const key = JSON.stringify([cropKey, variety === null ? 1 : 0, variety]);
    const before = sums.get(key)?.seeds ?? 0;
    sums.set(key, { cropKey, variety, seeds: wholeFrom(0, before + wholeFrom(0, seeds)) });
  }
  return [...sums].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, need]) => need);
}
