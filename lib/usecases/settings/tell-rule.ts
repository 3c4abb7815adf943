import 'server-only';
import type { RuleChange } from '@/lib/domain/catalogue/rule-changes';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import { deliveryRules, settings } from '@/lib/domain/catalogue/settings';
import { everyMemberId } from '../deliveries/recipients';
import type { WriteContext } from '../operation';
import { tell } from '../tell';

/** Tell everybody of a rule that changes: what everybody's need or share rests on is never changed behind their backs. */
export async function tellRule(
  context: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  { key, before, after, from }: RuleChange,
  who: 'The committee' | 'A count of hands',
): Promise<void> {
  const { name } = settings[key];
  const change = `“${name}” is ${settingValueWords(key, after)} from ${from}; it was ${settingValueWords(key, before)}.`;
  const keeping = deliveryRules.includes(key)
    ? ' It counts from the next delivery that is planned from then on: those that are planned or open keep the rules they were planned with.'
    : '';
  await tell(
    context,
    await everyMemberId(context.tx, context.scope, context.today),
    'a rule of the society has changed',
    `${who} has changed a rule: ${change}${keeping} Sign in to see all the rules and what each was before.`,
  );
}
