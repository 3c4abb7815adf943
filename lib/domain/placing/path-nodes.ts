import type { Point } from '../ground/segment';
import { byPlace } from './by-place';
import type { Piece } from './piece';
import { joinedGroups } from './joined-groups';
import { type Joint, placeOf, type Station } from './joints';
import type { Ways } from './shortest-ways';

/** A joint, an end, or a place where somebody comes on to the paths. */
export type PathNode = {
  readonly at: Point;
  /** Which part of the paths it lies on; parts are not joined to each other. */
  readonly part: number;
  /** Whether a lorry can drive there. */
  readonly lorry: boolean;
  readonly ways: Ways;
};

export type PathNodes = { readonly nodes: readonly PathNode[]; readonly nodeAt: (station: Station) => number };

/**
 * The nodes of a site's paths and the ways between them.
 *
 * Method: the ends of pieces and of what a lorry can drive, the joints and the stations asked for; those at one place are one
 * node. Ways run along a piece from each of its nodes to the next, and over gaps. A length is the difference of two places
 * that were rounded once, so that however many nodes lie on a piece, its ways sum to its length, and a node more changes
 * none of the distances between the others.
 *
 * @param parts     for each piece the part it belongs to
 * @param stations  further places that are wanted as nodes
 * @returns         nodes in the order in which they lie on the pieces, and the node of any station named here
 * @source          exact arithmetic
 * @example         one piece of 900 cm, asked for 400 → nodes at 0, 400 and 900; ways of 400 and 500
 */
export function pathNodes(
  pieces: readonly Piece[],
  joints: readonly Joint[],
  parts: readonly number[],
  stations: readonly Station[],
): PathNodes {
  const all = inOrder([...pieces.flatMap(endsOf), ...joints.flatMap(({ from, to }) => [from, to]), ...stations]);
  const numbers = new Map(all.map((station, at) => [keyOf(station), at]));
  const numberOf = (station: Station) => numbers.get(keyOf(station)) as number;
  const met = joints.filter(({ gapCm }) => gapCm === 0);
  const nodeOf = joinedGroups(
    all.length,
    met.map(({ from, to }) => [numberOf(from), numberOf(to)]),
  );
  const nodeAt = (station: Station) => nodeOf[numberOf(station)] as number;
  const members: Station[][] = [];
  for (const station of all) (members[nodeAt(station)] ??= []).push(station);
  const ways = waysBetween(all, joints, nodeAt, members.length);
  const nodes = members.map((here, at) => ({
    at: here.map((station) => placeOf(pieces, station)).reduce((best, one) => (byPlace(one, best) < 0 ? one : best)),
    part: parts[here[0]?.piece ?? 0] ?? 0,
    lorry: here.some((station) => isDrivable(pieces, station)),
    ways: ways[at] ?? [],
  }));
  return { nodes, nodeAt };
}

function endsOf({ lengthCm, lorry }: Piece, piece: number): Station[] {
  return [0, lengthCm, ...lorry.flatMap(({ fromCm, toCm }) => [fromCm, toCm])].map((atCm) => ({ piece, atCm }));
}

function inOrder(stations: readonly Station[]): Station[] {
  const once = new Map(stations.map((station) => [keyOf(station), station]));
  return [...once.values()].sort((one, other) => one.piece - other.piece || one.atCm - other.atCm);
}

function waysBetween(
  all: readonly Station[],
  joints: readonly Joint[],
  nodeAt: (station: Station) => number,
  count: number,
): { to: number; lengthCm: number }[][] {
  const ways = Array.from({ length: count }, () => [] as { to: number; lengthCm: number }[]);
  const join = (from: Station, to: Station, lengthCm: number) => {
    const [one, other] = [nodeAt(from), nodeAt(to)];
    if (one === other) return;
    ways[one]?.push({ to: other, lengthCm });
    ways[other]?.push({ to: one, lengthCm });
  };
  for (const [at, station] of all.entries()) {
    const next = all[at + 1];
    if (next?.piece === station.piece) join(station, next, next.atCm - station.atCm);
  }
  for (const { from, to, gapCm } of joints) if (gapCm > 0) join(from, to, gapCm);
  return ways;
}

function isDrivable(pieces: readonly Piece[], { piece, atCm }: Station): boolean {
  return (pieces[piece]?.lorry ?? []).some(({ fromCm, toCm }) => fromCm <= atCm && atCm <= toCm);
}

function keyOf({ piece, atCm }: Station): string {
  return `${piece} ${atCm}`;
}
