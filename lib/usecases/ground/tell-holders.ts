import 'server-only';
import { changedHoldingSince } from '@/lib/data/audit';
import { othersOf } from '@/lib/domain/policy/holding';
import { instantIn } from '@/lib/platform/clock';
import type { WriteContext } from '../operation';
import { tell } from '../tell';
import type { HoldingOnDay } from '@/lib/data/holding';

type Ground = { readonly plot: { readonly number: string }; readonly holding: HoldingOnDay | null };

/**
 * Tell the other holders that somebody changed their beds or plantings: by the day's first change of each person, since
 * an evening of filling in seasons is one thing to tell. All of it stands on their page of the week.
 */
export async function tellHolders(context: WriteContext, { plot, holding }: Ground): Promise<void> {
  if (!holding) return;
  const { tx, scope, today } = context;
  const others = othersOf(holding, scope.memberId);
  if (others.length === 0) return;
  const morning = instantIn(scope.timeZone, `${today}T00:00`);
  if (await changedHoldingSince(tx, scope, holding.id, morning)) return;
  await tell(
    context,
    others,
    `changes on plot ${plot.number}`,
    `${scope.memberName} is changing the records of plot ${plot.number} today. “This week” lists what was changed lately on your ground.`,
  );
}
