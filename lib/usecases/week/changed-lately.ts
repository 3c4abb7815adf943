import 'server-only';
import { changesByOthers } from '@/lib/data/audit';
import { cropsOf } from '@/lib/data/crop';
import type { HoldingOnDay } from '@/lib/data/holding';
import { settingHistory } from '@/lib/data/setting';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { type RuleChange, ruleChanges } from '@/lib/domain/catalogue/rule-changes';
import { dayIn, instantIn } from '@/lib/platform/clock';
import type { ReadContext } from '../operation';

/** What the committee changed of the society's rules in the last weeks, or for the weeks to come. */
export async function rulesChanged({ db, scope, today }: ReadContext): Promise<RuleChange[]> {
  const history = await settingHistory(db, scope, 'rules');
  const set = history.map(({ setAt, ...one }) => ({ ...one, at: setAt, setOn: dayIn(scope.timeZone, setAt) }));
  return ruleChanges(
    set.toSorted((a, b) => a.at.getTime() - b.at.getTime()),
    today,
  );
}

type Facts = { crop?: string; season?: number; bed?: string; name?: string; count?: number };

/** What the other holders, or the secretary for them, changed on the viewer's ground in the last fortnight. */
export async function changedLately({ db, scope, today }: ReadContext, holdings: readonly HoldingOnDay[]) {
  const since = instantIn(scope.timeZone, `${addDays(today, -13)}T00:00`);
  const ids = holdings.map(({ id }) => id);
  const [changes, crops] = await Promise.all([changesByOthers(db, scope, ids, since), cropsOf(db, scope)]);
  return changes.map(({ id, at, by, thing, verb, before, after }) => {
    const facts = (after ?? before ?? {}) as Facts;
    return {
      id,
      at,
      by,
      verb,
      what: facts.crop
        ? (crops.get(facts.crop)?.name ?? 'bare ground')
        : facts.count
          ? `${facts.count} plantings`
          : `${thing} ${facts.name ?? ''}`.trim(),
      season: facts.season ?? null,
      bed: facts.bed ?? null,
    };
  });
}
