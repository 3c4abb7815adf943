import 'server-only';
import type { PathFacts } from '@/lib/data/site-path';
import type { Point } from '@/lib/domain/ground/segment';
import type { Stretch } from '@/lib/domain/placing/piece';
import { parseDistance } from '@/lib/domain/placing/parse-distance';
import { readPoints } from '@/lib/domain/placing/read-points';
import { pathLengthCm } from '@/lib/domain/placing/stretch-points';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { type Refusal, Refused, refuse } from '../refusal';

/** More is no path that anybody drew by hand. */
const mostPoints = 200;

type Typed = {
  readonly name: string | null;
  readonly points: string;
  readonly lorry: 'none' | 'whole' | 'part';
  readonly lorryFrom: string;
  readonly lorryTo: string;
};

/** A path as it was typed: its points, and what of it a lorry can drive; refused beside the field that is wrong. */
export function readPath(typed: Typed, units: Units): PathFacts {
  const points = pointsOf(typed.points, units);
  const lorry = typed.lorry === 'part' ? partOf(typed, pathLengthCm(points), units) : typed.lorry;
  return { name: typed.name, points, lorry };
}

function pointsOf(text: string, units: Units): readonly Point[] {
  const read = readPoints(text, units);
  if (!read.ok) {
    const code = read.code === 'too-far' ? 'path-too-far' : 'path-point-wrong';
    refuse(code, { field: 'points', numbers: { line: read.line, example: units === 'metric' ? '2, 27.5' : '6, 90' } });
  }
  if (read.points.length > mostPoints)
    refuse('path-too-many-points', { field: 'points', numbers: { most: mostPoints } });
  if (pathLengthCm(read.points) === 0) refuse('path-without-length', { field: 'points' });
  return read.points;
}

// An end left empty is the path's own.
function partOf({ lorryFrom, lorryTo }: Typed, lengthCm: number, units: Units): Stretch {
  const refusals: Refusal[] = [];
  const along = (field: 'lorryFrom' | 'lorryTo', text: string, empty: number) => {
    if (text.trim() === '') return empty;
    const read = parseDistance(text, units);
    if (!read.ok || read.cm < 0)
      refusals.push({ code: 'lorry-part-wrong', field, numbers: { example: units === 'metric' ? '40' : '130' } });
    else if (read.cm > lengthCm)
      refusals.push({ code: 'lorry-part-beyond', field, numbers: { length: formatLength(lengthCm, units) } });
    return read.ok ? read.cm : 0;
  };
  const part = { fromCm: along('lorryFrom', lorryFrom, 0), toCm: along('lorryTo', lorryTo, lengthCm) };
  if (refusals.length) throw new Refused(refusals);
  if (part.fromCm >= part.toCm) refuse('lorry-part-backwards', { field: lorryTo.trim() ? 'lorryTo' : 'lorryFrom' });
  return part;
}

/** A place on the site as it was typed, refused beside the field that is wrong. */
export function readPlace(typed: { readonly east: string; readonly south: string }, units: Units): Point {
  const refusals: Refusal[] = [];
  const [xCm, yCm] = (['east', 'south'] as const).map((field) => {
    const read = parseDistance(typed[field], units);
    if (read.ok) return read.cm;
    const code = read.code === 'too-far' ? 'place-too-far' : 'place-wrong';
    refusals.push({ code, field, numbers: { example: units === 'metric' ? '27.5' : '90' } });
    return 0;
  });
  if (refusals.length) throw new Refused(refusals);
  return { xCm: xCm ?? 0, yCm: yCm ?? 0 };
}
