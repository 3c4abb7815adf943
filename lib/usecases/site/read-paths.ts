import 'server-only';
import { z } from 'zod';
import { deliveryComingTo } from '@/lib/data/delivery';
import { dropPointById, dropPointsAnywhere } from '@/lib/data/drop-point';
import { pathById } from '@/lib/data/site-path';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { drawnSite } from './drawn-site';
import { siteAsked } from './site-asked';

const nobody: ReadonlySet<string> = new Set();

/** A site's paths and drop points on its plan, for the secretary who draws them. */
export const readPaths = query({
  name: 'read-paths',
  allow: canRunSociety,
  input: z.object({ siteId: z.uuid().nullish().catch(null) }),
  read: async (context, { siteId }) => {
    const { units } = context.scope;
    const { sites, site } = await siteAsked(context, siteId);
    if (!site) return { site: null, sites: [], units, plan: [], paths: [], dropPoints: [] };
    const { plan, paths, dropPoints } = await drawnSite(context, site.id, nobody);
    return { site, sites: sites.map(({ id, name }) => ({ id, name })), units, plan, paths, dropPoints };
  },
});

/** Every drop point of the society that a load can be sent to. */
export const listDropPoints = query({
  name: 'list-drop-points',
  allow: canRunSociety,
  input: z.object({}),
  read: ({ db, scope }) => dropPointsAnywhere(db, scope),
});

/** One path on the plan of its site. */
export const readPath = query({
  name: 'read-path',
  allow: canRunSociety,
  input: z.object({ pathId: z.uuid() }),
  read: async (context, { pathId }) => {
    const path = await pathById(context.db, context.scope, pathId);
    if (!path) throw new NotFound();
    const { site } = await siteAsked(context, path.siteId);
    const { plan, paths, dropPoints } = await drawnSite(context, path.siteId, nobody);
    return { path, site, units: context.scope.units, plan, paths: paths.filter(({ id }) => id !== pathId), dropPoints };
  },
});

/** One drop point on the plan of its site, and whether a load is still to come there. */
export const readDropPoint = query({
  name: 'read-drop-point',
  allow: canRunSociety,
  input: z.object({ dropPointId: z.uuid() }),
  read: async (context, { dropPointId }) => {
    const { db, scope } = context;
    const dropPoint = await dropPointById(db, scope, dropPointId);
    if (!dropPoint) throw new NotFound();
    const { site } = await siteAsked(context, dropPoint.siteId);
    const { plan, paths, dropPoints } = await drawnSite(context, dropPoint.siteId, nobody);
    const others = dropPoints.filter(({ id }) => id !== dropPointId);
    const awaits = await deliveryComingTo(db, scope, dropPointId);
    return { dropPoint, awaits, site, units: scope.units, plan, paths, dropPoints: others };
  },
});
