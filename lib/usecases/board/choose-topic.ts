import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { deliveriesOf } from '@/lib/data/delivery';
import { holdingsOfMember } from '@/lib/data/holding';
import type { Topic } from '@/lib/domain/board/topic';
import { troubles } from '@/lib/domain/catalogue/troubles';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import type { ReadContext, WriteContext } from '../operation';
import { refuse } from '../refusal';
import { topicState } from './topic-state';

/** What the viewer may write about, for the list of a form. */
export async function topicsFor({ db, scope, now, today }: ReadContext) {
  const [crops, deliveries, holdings] = await Promise.all([
    cropsOf(db, scope),
    deliveriesOf(db, scope, now),
    holdingsOfMember(db, scope, scope.memberId, today),
  ]);
  const plots = new Map(holdings.flatMap((holding) => holding.plots).map(({ id, number }) => [id, number]));
  const beds = plots.size ? await bedsStanding(db, scope, today, today, [...plots.keys()]) : [];
  return {
    crops: [...crops.values()].map(({ key, name }) => ({ key, name })).sort(byName),
    beds: beds.map(({ id, name, plotId }) => ({ key: id, name, plotNumber: plots.get(plotId) ?? '' })),
    deliveries: deliveries.filter((one) => canSeeDelivery(scope, one)).map(({ id, name }) => ({ key: id, name })),
    troubles: troubles.map(({ key, name }) => ({ key, name })),
  };
}

/** Refuse a topic that is not there for the viewer, or a bed that is not theirs to write about. */
export async function checkTopic({ tx, scope, now, today }: WriteContext, topic: Topic | null): Promise<void> {
  if (!topic) return;
  const state = await topicState({ db: tx, scope, now, today }, topic);
  if (!state || (state.kind === 'bed' && !state.isOwn)) refuse('topic-gone', { field: 'topic' });
}

function byName(one: { name: string }, other: { name: string }): number {
  return one.name.localeCompare(other.name, 'en-GB');
}
