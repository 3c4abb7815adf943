import { limeTargets } from '../catalogue/lime-tables';
import type { SoilKey } from '../catalogue/soils';
import type { SourceKey } from '../catalogue/sources';
import type { Recipe } from './recipe-of';

export type LimeTarget = {
  readonly phTenths: number;
  /** Somebody set it; or it is the recipe's, or another that the ground asks for. */
  readonly because: 'set' | 'recipe' | 'clubroot' | 'peat';
  readonly source: SourceKey;
};

/**
 * The pH that a recipe's ground is limed up to.
 *
 * Method: what a member or the society set stands. Else brassicas on ground where clubroot was found have its higher target,
 * and other ground of peat has peat's lower one.
 *
 * @param soil      of the ground
 * @param clubroot  whether it was found there
 * @returns         null where the recipe has no lime [tenths of pH]
 * @source          Defra, Fertiliser Manual (RB209), 8th edition, 2010, Section 5
 * @example         brassicas on loam → 65; with clubroot → 70; on peat → 58
 */
export function limeTargetOf(
  { group, lime, limeTargetPhTenths: told }: Recipe,
  soil: SoilKey,
  clubroot: boolean,
): LimeTarget | null {
  if (lime.value === 'none') return null;
  if (told.setBy !== 'catalogue') return { phTenths: told.value, because: 'set', source: told.source };
  const because = clubroot && group === 'brassicas' ? 'clubroot' : soil === 'peaty' ? 'peat' : 'recipe';
  const row = because === 'recipe' ? null : limeTargets[because];
  return { phTenths: row?.leastPhTenths ?? told.value, because, source: row?.source ?? told.source };
}
