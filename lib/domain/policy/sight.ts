import { canReadCommitteePapers, canRunSociety, type Standing } from './standing';

/** What a viewer may see of a plot's beds. */
export type Sight = 'all' | 'crop' | 'group' | 'nothing';

/** What the viewer sees of ground: all of their own, and of other people's what the society lets neighbours see. */
export function sightOf(viewer: Standing, neighboursSee: string, isOwn: boolean): Sight {
  if (isOwn || canRunSociety(viewer)) return 'all';
  if (canReadCommitteePapers(viewer)) return 'crop';
  return neighboursSee === 'nothing' ? 'nothing' : neighboursSee === 'group' ? 'group' : 'crop';
}
