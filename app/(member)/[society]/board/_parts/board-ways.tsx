import Link from 'next/link';
import { Sheet } from '@/app/_ui/sheet';

/** What stands beside the talk: what the records say, what is tried out, what was decided. */
export function BoardWays({ society }: { society: string }) {
  const ways = [
    { to: 'board/results', name: 'Comparing notes', says: 'what beds gave, by how they were treated' },
    { to: 'board/trials', name: 'Trials', says: 'two treatments side by side, laid out by lot' },
    { to: 'board/decisions', name: 'Decisions', says: 'counts of hands, and what they changed' },
    { to: 'review', name: 'Season review', says: 'the whole season on one page, to print' },
  ];
  return (
    <Sheet title="Beside the talk" wide>
      <ul className="board-ways">
        {ways.map(({ to, name, says }) => (
          <li key={to}>
            <Link href={`/${society}/${to}`}>{name}</Link> <span className="soft">{says}</span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
