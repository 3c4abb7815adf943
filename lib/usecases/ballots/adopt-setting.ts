import 'server-only';
import type { Change } from '@/lib/data/audit';
import type { Applied, ProposedSetting } from '@/lib/data/ballot';
import { appendSetting, settingsOn } from '@/lib/data/setting';
import { isAllowed, settingInForce } from '@/lib/domain/catalogue/settings';
import type { WriteContext } from '../operation';
import { tellRule } from '../settings/tell-rule';
import { windowWith } from '../settings/typed-setting';

/**
 * Set the rule that a motion carried, from its day on. What the rules no longer allow is not set, and it is said why: they may have
 * moved since the question was put.
 */
export async function adoptSetting(
  context: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  { ballotId, at, setting }: { readonly ballotId: string; readonly at: Date; readonly setting: ProposedSetting },
): Promise<{ readonly applied: Applied; readonly changes: readonly Change[] }> {
  const { tx, scope } = context;
  const { key, value, from } = setting;
  if (!isAllowed(key, value)) return { applied: 'out-of-range', changes: [] };
  const values = await settingsOn(tx, scope, from);
  if (!windowWith(values, key, value).isOpen) return { applied: 'window-inside-out', changes: [] };
  const before = settingInForce(values, key);
  await appendSetting(tx, scope, { key, value, from, at, ballotId });
  if (before !== value) await tellRule(context, { key, before, after: value, from }, 'A count of hands');
  const after = { key, value, from, ballotId };
  return { applied: 'set', changes: [{ verb: 'set', thing: 'setting', thingId: null, after }] };
}
