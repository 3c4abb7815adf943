import Link from 'next/link';
import { stateWords } from '@/app/_ui/delivery-words';
import type { readGateList } from '@/lib/usecases/deliveries/read-deliveries';

type Also = Awaited<ReturnType<typeof readGateList.run>>['also'];

/** What comes on the same lorry: opened, closed and put off with it; measured, shared out and settled each by itself. */
export function ComesWith({ society, also }: { society: string; also: Also }) {
  if (also.length === 0) return null;
  return (
    <p className="wide">
      It comes with{' '}
      {also.map(({ id, name, state }, at) => (
        <span key={id}>
          {at ? ', ' : ''}
          <Link href={`/${society}/office/deliveries/${id}`}>{name}</Link> ({stateWords(state)})
        </span>
      ))}
      . Opening, closing and putting off are done for all of them at once; each heap is measured, shared out, collected
      and settled by itself.
    </p>
  );
}
