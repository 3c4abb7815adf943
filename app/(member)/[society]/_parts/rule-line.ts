import { dayWords } from '@/app/_ui/delivery-words';
import type { RuleChange } from '@/lib/domain/catalogue/rule-changes';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import { deliveryRules, settings } from '@/lib/domain/catalogue/settings';

/** A rule that the committee changed, as its parts: what, from what, to what, and from when. */
export function ruleParts({ key, before, after, from }: RuleChange) {
  const counts = deliveryRules.includes(key) ? ', for deliveries planned from then on' : '';
  return {
    name: settings[key].name,
    before: settingValueWords(key, before),
    after: settingValueWords(key, after),
    since: `from ${dayWords(from)}${counts}`,
  };
}
