import type { Point } from '../ground/segment';
import type { Units } from '../quantity/length';
import { formatDistance, parseDistance } from './parse-distance';

export type TypedPoints =
  | { readonly ok: true; readonly points: readonly Point[] }
  | { readonly ok: false; readonly code: 'not-a-point' | 'too-far'; readonly line: number };

/**
 * The points of a path as they are typed: one a line, how far east and how far south of the site's corner.
 *
 * Method: the two stand apart by a semicolon, or by a comma where there is no semicolon. Empty lines are passed over.
 *
 * @param units  what the member measures in; see `parseDistance`
 * @returns      the points in whole cm, in order; or the first line that is none, counted from 1
 * @source       common practice
 * @example      readPoints('2, 27.5\n106, 27.5', 'metric') → 200, 2750; 10,600, 2750
 */
export function readPoints(text: string, units: Units): TypedPoints {
  const points: Point[] = [];
  for (const [at, typed] of text.split(/\r?\n/).entries()) {
    if (typed.trim() === '') continue;
    const parts = typed.split(typed.includes(';') ? ';' : ',');
    const [x, y] = parts.map((part) => parseDistance(part, units));
    if (!x || !y || parts.length !== 2) return { ok: false, code: 'not-a-point', line: at + 1 };
    if (!x.ok || !y.ok) return { ok: false, code: isTooFar([x, y]) ? 'too-far' : 'not-a-point', line: at + 1 };
    points.push({ xCm: x.cm, yCm: y.cm });
  }
  return { ok: true, points };
}

function isTooFar(both: readonly ReturnType<typeof parseDistance>[]): boolean {
  return both.every((one) => one.ok || one.code === 'too-far');
}

/**
 * Points as they are typed, so that reading them again gives the same.
 *
 * @example formatPoints([{ xCm: 200, yCm: 2750 }], 'metric') → '2, 27.5'
 */
export function formatPoints(points: readonly Point[], units: Units): string {
  return points.map(({ xCm, yCm }) => `${formatDistance(xCm, units)}, ${formatDistance(yCm, units)}`).join('\n');
}
