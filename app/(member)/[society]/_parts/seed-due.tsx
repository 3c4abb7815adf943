import { whenWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import type { SeedDue } from '@/lib/usecases/seed/due-seed';

const steps = {
  open: 'put on its list what can be ordered, and open it',
  order: 'the lists are closed; order the packs',
  'tick-off': 'ordered; tick off what comes',
  settle: 'hand it out, and settle it',
} as const;

/** What wants doing about the society's orders of seed, as a line of the week. */
export function seedItem(due: SeedDue, society: string, timeZone: string): DueItem {
  if (due.code === 'run-seed')
    return {
      key: `run-seed ${due.orderId}`,
      when: 'seed order',
      what: `“${due.name}”: ${steps[due.step]}`,
      action: { href: `/${society}/office/seed/${due.orderId}`, label: 'Run it' },
    };
  const href = `/${society}/seed/orders/${due.orderId}`;
  if (due.code === 'fetch-seed')
    return {
      key: `fetch-seed ${due.orderId} ${due.holdingId}`,
      when: 'it is here',
      what: `Fetch your seed of “${due.name}”`,
      why: `${due.items} ${due.items === 1 ? 'thing is' : 'things are'} waiting for you at the secretary’s.`,
      action: { href, label: 'See what' },
    };
  return {
    key: `list-seed ${due.orderId} ${due.holdingId}`,
    when: due.daysLeft > 0 ? `${due.daysLeft} ${due.daysLeft === 1 ? 'day' : 'days'} left` : 'today',
    late: due.daysLeft <= 1,
    what: `Put down what seed you want of “${due.name}”`,
    why: `Plot ${due.plots.join(', ')}. The list closes ${whenWords(due.closesAt, timeZone)}.`,
    action: { href, label: 'Put it down' },
  };
}
