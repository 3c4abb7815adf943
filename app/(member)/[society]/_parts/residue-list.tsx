import Link from 'next/link';
import { Mark } from '@/app/_ui/mark';
import { verdictMarks, verdictWords } from '@/app/_ui/residue-words';
import type { ShownTest } from '@/lib/usecases/residue/shown-test';
import { testAt } from './residue-address';
import { nextWords } from './residue-next';

/** Tests, each with what it shows so far and what it wants next. */
export function TestList({ society, tests }: { society: string; tests: readonly ShownTest[] }) {
  return (
    <ul className="plain-list">
      {tests.map((test) => (
        <li key={test.id}>
          <p>
            <Link href={testAt(society, { testId: test.id, deliveryId: test.deliveryId })}>{test.name}</Link>{' '}
            <Mark kind={verdictMarks[test.judged.verdict]}>{verdictWords(test.judged.verdict, test.isEnded)}</Mark>
          </p>
          <p className="small soft">{nextWords(test)}</p>
        </li>
      ))}
    </ul>
  );
}
