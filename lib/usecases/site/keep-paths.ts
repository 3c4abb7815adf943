import 'server-only';
import { lockSite } from '@/lib/data/plot-store';
import {
  changePath as writeChange,
  createPath,
  lockPath,
  type PathFacts,
  pathsOf,
  retirePath as writeRetired,
} from '@/lib/data/site-path';
import { pathLengthCm } from '@/lib/domain/placing/stretch-points';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { addPathInput, changePathInput, retirePathInput } from '@/lib/schemas/site/path';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';
import { readPath } from './typed-path';

/** So many are searched while a page is served. */
const mostPaths = 200;

function forBook({ points, lorry, name }: PathFacts) {
  const part = typeof lorry === 'string' ? { lorry } : { lorry: 'part', ...lorry };
  return { name, points: points.map(({ xCm, yCm }) => [xCm, yCm]), lengthCm: pathLengthCm(points), ...part };
}

/** Draw a path of a site, and say how much of it a lorry can drive. */
export const addPath = mutation({
  name: 'add-path',
  allow: canRunSociety,
  input: addPathInput,
  write: async ({ tx, scope, note }, { writeId: _, siteId, ...typed }) => {
    if (!(await lockSite(tx, scope, siteId))) throw new NotFound();
    const facts = readPath(typed, scope.units);
    if ((await pathsOf(tx, scope, siteId)).length >= mostPaths)
      refuse('too-many-paths', { field: 'points', numbers: { most: mostPaths } });
    const pathId = await createPath(tx, scope, siteId, facts);
    note({ verb: 'drawn', thing: 'path', thingId: pathId, after: forBook(facts) });
    return { pathId };
  },
});

/** Draw it anew, name it, or say otherwise where a lorry can drive. */
export const changePath = mutation({
  name: 'change-path',
  allow: canRunSociety,
  input: changePathInput,
  write: async ({ tx, scope, note }, { writeId: _, pathId, ...typed }) => {
    const before = await lockPath(tx, scope, pathId);
    if (!before) throw new NotFound();
    const facts = readPath(typed, scope.units);
    await writeChange(tx, scope, pathId, facts);
    note({ verb: 'changed', thing: 'path', thingId: pathId, before: forBook(before), after: forBook(facts) });
    return { pathId };
  },
});

/** Take a path off the plan: it was closed, or was never one. */
export const retirePath = mutation({
  name: 'retire-path',
  allow: canRunSociety,
  input: retirePathInput,
  write: async ({ tx, scope, now, note }, { pathId }) => {
    const before = await lockPath(tx, scope, pathId);
    if (!before) throw new NotFound();
    await writeRetired(tx, scope, pathId, now);
    note({ verb: 'retired', thing: 'path', thingId: pathId, before: forBook(before) });
    return { siteId: before.siteId };
  },
});
