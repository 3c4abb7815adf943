import type { DueItem } from '@/app/_ui/due-list';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { OwesDue } from '@/lib/usecases/money/due-money';

/** What a holding owes, as a line of the week. */
export function owesItem({ holdingId, plots, minor }: OwesDue, society: string): DueItem {
  return {
    key: `owes ${holdingId}`,
    when: 'when you can',
    what: `You owe the society ${formatPounds(minor)}`,
    why: plots.length ? `For ${plots.length === 1 ? 'plot' : 'plots'} ${plots.join(', ')}.` : undefined,
    action: { href: `/${society}/money`, label: 'What for' },
  };
}
