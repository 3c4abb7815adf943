import 'server-only';
import type { Polygon } from '@/lib/domain/ground/polygon';
import { parseLength, type Units } from '@/lib/domain/quantity/length';
import { Refused } from '../refusal';

/** Corners as they are typed: one a line, the distance along the first axis, a comma or semicolon, and along the second. */
export function readCorners(text: string, units: Units): Polygon {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter(Boolean);
  return lines.map((line, at) => {
    const [x = '', y = '', ...more] = line.split(/[;,]/);
    const [xRead, yRead] = [parseLength(x, units), parseLength(y, units)];
    if (!xRead.ok || !yRead.ok || more.length)
      throw new Refused([
        {
          code: 'input',
          field: 'corners',
          words: `Line ${at + 1} is no corner. Give two lengths, such as 6.5 m; 12 m.`,
        },
      ]);
    return { xCm: Math.round(xRead.tenthMm / 100), yCm: Math.round(yRead.tenthMm / 100) };
  });
}
