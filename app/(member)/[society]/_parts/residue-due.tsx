import { dayWords, whenWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import type { ResidueDue } from '@/lib/usecases/residue/due-residue';
import { testAt } from './residue-address';

/** What wants doing about residues, as a line of the week. */
export function residueItem(due: ResidueDue, society: string, today: string, timeZone: string): DueItem {
  if (due.code === 'held')
    return {
      key: `held ${due.deliveryId}`,
      when: 'decide',
      late: true,
      what: `“${due.name}” is held: release it, or call it off`,
      why: `From ${whenWords(due.since, timeZone)}: ${due.reason}`,
      action: { href: `/${society}/office/deliveries/${due.deliveryId}#hold`, label: 'Decide' },
    };
  if (due.code === 'symptoms')
    return {
      key: `symptoms ${due.testId}`,
      when: 'decide',
      late: true,
      what: `A residue test of “${due.name}” shows symptoms`,
      why: 'Hold it from being shared out until you know more.',
      action: { href: `/${society}/office/deliveries/${due.deliveryId}#hold`, label: 'Hold it' },
    };
  return {
    key: `pots ${due.testId}`,
    when: dueWords(due, today),
    late: due.lateDays > 0,
    what: due.next === 'sow' ? `Sow the pots of “${due.name}”` : `Read the pots of “${due.name}”`,
    why: 'Residue test: how many are up, how many distorted, how far grown.',
    action: { href: testAt(society, due), label: due.next === 'sow' ? 'Sow them' : 'Read them' },
  };
}

function dueWords({ dueOn, lateDays }: Extract<ResidueDue, { code: 'pots' }>, today: string): string {
  if (dueOn === null) return 'when you can';
  if (lateDays > 0) return `${lateDays} ${lateDays === 1 ? 'day' : 'days'} late`;
  return dueOn === today ? 'today' : `on ${dayWords(dueOn).slice(0, -5)}`;
}
