import Link from 'next/link';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason } from '@/app/_ui/sheet';
import { apartWords, warmthWords } from '@/app/_ui/store-words';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import type { ReadLot } from '@/lib/usecases/store/read-lot';

const nameOf = (key: string | undefined) => keepingOf(key ?? '')?.name ?? '';

/** What is wrong with where a lot stands. It is said, and nothing is refused: there may be no better place. */
export function LotWarnings({ society, read }: { society: string; read: ReadLot }) {
  const { apart, warmth } = read.warnings;
  if (apart.length + warmth.length === 0) return null;
  const sources = [...new Set([...warmth, ...apart].map(({ source }) => sourceWords(source)))];
  return (
    <div className="notice short wide" role="note">
      <p>
        <strong>Not the best place for it:</strong>
      </p>
      <ul>
        {warmth.map((limit) => (
          <li key={`${limit.code} ${limit.belowTenthC}`}>{warmthWords(limit)}</li>
        ))}
        {apart.map((finding) => {
          const otherId = finding.lotId === read.id ? finding.besideId : finding.lotId;
          return (
            <li key={`${finding.code} ${finding.lotId} ${finding.besideId}`}>
              {apartWords(finding, nameOf(finding.harmed?.keepingKey), nameOf(finding.beside?.keepingKey))}{' '}
              <Link href={`/${society}/store/lots/${otherId}`}>The other lot</Link>
            </li>
          );
        })}
      </ul>
      <Reason ask="Who says so?">
        <p className="small">{sources.join('; ')}.</p>
      </Reason>
    </div>
  );
}
