import 'server-only';
import { sitesOf } from '@/lib/data/plot-store';
import type { ReadContext } from '../operation';
import { NotFound } from '../refusal';

/** The society's sites, and the one asked for: the first where none is named, none where there are none. */
export async function siteAsked({ db, scope }: ReadContext, siteId: string | null | undefined) {
  const sites = await sitesOf(db, scope);
  const site = (siteId ? sites.find(({ id }) => id === siteId) : sites[0]) ?? null;
  if (siteId && !site) throw new NotFound();
  return { sites, site };
}
