import { whenWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import type { BoardDue } from '@/lib/usecases/board/due-board';

/** What the board wants, as a line of the week. */
export function boardItem(due: BoardDue, society: string, timeZone: string): DueItem {
  const at = `/${society}/board`;
  if (due.code === 'must-read')
    return {
      key: `read ${due.threadId}`,
      when: 'please read',
      what: `“${due.title}”`,
      why: `A notice of the committee, from ${whenWords(due.postedAt, timeZone)}.`,
      action: { href: `${at}/${due.threadId}`, label: 'Read it' },
    };
  if (due.code === 'replies')
    return {
      key: `replies ${due.threadId}`,
      when: 'new',
      what: `${due.replies === 1 ? 'A reply' : `${due.replies} replies`} in “${due.title}”`,
      why: `Since ${whenWords(due.since, timeZone)}.`,
      action: { href: `${at}/${due.threadId}`, label: 'Read' },
    };
  return {
    key: 'reported',
    when: 'committee',
    what: due.count === 1 ? 'A post on the board was reported' : `${due.count} posts on the board were reported`,
    action: { href: `${at}/reports`, label: 'Look' },
  };
}
