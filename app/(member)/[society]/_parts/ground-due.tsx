import type { DueItem } from '@/app/_ui/due-list';
import type { GroundDue } from '@/lib/usecases/week/due-ground';

/** What the records of one’s ground want, as a line of the week. */
export function groundItem(due: GroundDue, society: string): DueItem {
  const at = `/${society}/ground/plots/${due.plotId}`;
  if (due.code === 'draw-beds')
    return {
      key: `draw ${due.plotId}`,
      when: 'when you can',
      what: `Draw the beds of plot ${due.plotNumber}`,
      why: 'Then its rotation, turns and needs are your own, and not assumed.',
      action: { href: `${at}/beds`, label: 'Draw beds' },
    };
  return {
    key: `record ${due.plotId} ${due.season}`,
    when: due.isNext ? 'this autumn' : 'overdue',
    late: !due.isNext,
    what: `${due.isNext ? 'Plan' : 'Record'} ${due.season} for ${due.beds.length === 1 ? 'bed' : 'beds'} ${due.beds.join(', ')}`,
    why: `Plot ${due.plotNumber}. ${due.isNext ? 'Each break is judged as you plan.' : 'What is not recorded stays “not known”.'}`,
    action: { href: `${at}/seasons`, label: `Fill in ${due.season}` },
  };
}
