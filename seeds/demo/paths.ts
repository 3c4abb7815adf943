import { randomUUID } from 'node:crypto';
import type { Caller } from '@/lib/usecases/operation';
import { addDropPoint } from '@/lib/usecases/site/keep-drop-points';
import { addPath } from '@/lib/usecases/site/keep-paths';
import { done } from './done';

/** A path along every row of plots, and the track from the gate that a lorry can drive for part of its way. */
const paths = [
  { name: 'Cart track', points: '1, 27.5\n106, 27.5', lorry: 'part', lorryTo: '62' },
  { name: 'West track', points: '1, 27.5\n1, 54\n-0.7, 77.6\n-2.6, 105', lorry: 'part', lorryTo: '52' },
  { name: 'Middle path', points: '1, 51.5\n105, 57.5', lorry: 'none' },
  { name: 'Lower path', points: '-0.7, 77.6\n104, 85.5', lorry: 'none' },
];

const dropPoints = [
  { name: 'Inside the gate', east: '3', south: '27.5' },
  { name: 'Water tank', east: '60', south: '27.5' },
  { name: 'Bend of the west track', east: '1', south: '54' },
];

/** Draw the demo's paths and drop points, as its secretary would; the id of the drop point that is used most. */
export async function drawPaths(secretary: Caller, siteId: string): Promise<string> {
  for (const path of paths) await done(addPath.run(secretary, { writeId: randomUUID(), siteId, ...path }));
  const made = [];
  for (const drop of dropPoints)
    made.push(await done(addDropPoint.run(secretary, { writeId: randomUUID(), siteId, ...drop })));
  return made[1]?.dropPointId ?? '';
}
