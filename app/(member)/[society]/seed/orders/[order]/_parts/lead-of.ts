import type { SeedOrderState } from '@/lib/domain/seed/order-steps';

/** What an order's state means for a member. */
export function leadOf(state: SeedOrderState, closes: string): string {
  const leads: Readonly<Record<SeedOrderState, string>> = {
    planned: `Not open yet. Lists will close ${closes}.`,
    open: `Put down what you want until ${closes}. You can change it until then.`,
    closed: `The list closed ${closes}. It is about to be ordered.`,
    ordered: 'It is ordered. You are told when it comes.',
    arrived: 'It is here. Fetch yours from the secretary.',
    settled: 'It is settled: what you owe stands on your account.',
    'called-off': 'Called off. Nobody owes anything for it.',
  };
  return leads[state];
}
