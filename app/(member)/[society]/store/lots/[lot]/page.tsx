import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { PageHead } from '@/app/_ui/sheet';
import { StoreCaution } from '@/app/_ui/store-caution';
import { lotName } from '@/app/_ui/store-words';
import { readLot } from '@/lib/usecases/store/read-lot';
import { GoingsOver } from '../../_parts/goings-over';
import { KeepLot } from '../../_parts/keep-lot';
import { LotCuring } from '../../_parts/lot-curing';
import { LotNowSheet } from '../../_parts/lot-now';
import { LotPublished } from '../../_parts/lot-published';
import { LotWarnings } from '../../_parts/lot-warnings';
import { Said } from '../../_parts/notice';

export const metadata: Metadata = { title: 'A lot' };

type Props = { params: Promise<{ society: string; lot: string }>; searchParams: Promise<{ said?: string }> };

export default async function LotPage({ params, searchParams }: Props) {
  const { society, lot: lotId } = await params;
  const { said } = await searchParams;
  const read = await ask(readLot, society, { lotId });
  const at = { society, read };
  return (
    <>
      <PageHead title={lotName(read)} lead={`Kept in ${read.place.name}.`}>
        {read.now.sound ? (
          <Link className={read.round?.isDue ? 'button first' : 'button'} href={`/${society}/store/round?lot=${lotId}`}>
            Go over it
          </Link>
        ) : null}
        <Link className="button" href={`/${society}/store/kinds/${read.keepingKey}?holding=${read.holdingId}`}>
          Will it last?
        </Link>
        <Link className="button" href={`/${society}/store`}>
          Back to the store
        </Link>
      </PageHead>
      <Said said={said} />
      <LotWarnings {...at} />
      <div className="stack">
        <LotNowSheet {...at} />
        <LotCuring {...at} />
        <GoingsOver {...at} />
        <StoreCaution keepingKeys={[read.keepingKey]} />
      </div>
      <div className="stack">
        <LotPublished {...at} />
        <KeepLot {...at} />
      </div>
    </>
  );
}
