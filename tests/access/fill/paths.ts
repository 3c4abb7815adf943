import { addDropPoint } from '@/lib/usecases/site/keep-drop-points';
import { addPath } from '@/lib/usecases/site/keep-paths';
import { done, once } from '../../fixtures/society';
import type { Members, Word } from './members';

/** A track along the plots that a lorry can drive for a part, and a drop point at its beginning that nothing is to come to. */
export async function makePaths(word: Word, { secretary }: Members, siteId: string) {
  const track = { siteId, name: word('track'), points: '0, 21\n40, 21', lorry: 'part', lorryTo: '10' };
  const { pathId } = await done(addPath.run(secretary.caller, once(track)));
  const gate = { siteId, name: word('drop point by the tap'), east: '0', south: '21' };
  const { dropPointId } = await done(addDropPoint.run(secretary.caller, once(gate)));
  return { pathId, dropPointId };
}
