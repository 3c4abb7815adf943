import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { seasonWords } from '@/app/_ui/yield-words';
import { formatArea } from '@/lib/domain/quantity/area';
import { readHarvestForm } from '@/lib/usecases/harvest/read-harvests';
import { HarvestCaution, WaitLine } from '../../beds/[bed]/_parts/harvest-waits';
import { HarvestForm } from '../_parts/harvest-form';

export const metadata: Metadata = { title: 'Log a harvest' };

type Search = { planting?: string; replaces?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function LogHarvestPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { planting: asked, replaces } = await searchParams;
  const read = await ask(readHarvestForm, society, { planting: asked, replaces: replaces || null });
  const { planting, bed, plotNumber, units, wait, corrects } = read;
  return (
    <>
      <PageHead
        title={`${corrects ? 'Correct a harvest' : 'Log a harvest'}: ${planting.cropName}${planting.variety ? ` ‘${planting.variety}’` : ''}`}
        lead={`Plot ${plotNumber}, bed ${bed.name}, ${formatArea(planting.areaCm2, units)}, ${seasonWords(planting)}.`}
      >
        <Link className="button" href={`/${society}/ground/harvests`}>
          All harvests
        </Link>
        <Link className="button" href={`/${society}/ground/beds/${bed.id}`}>
          The bed
        </Link>
      </PageHead>
      <Sheet title={corrects ? 'What it was' : 'What you lifted or picked'}>
        <HarvestForm society={society} read={read} />
      </Sheet>
      {wait ? (
        <Sheet title="It should wait yet">
          <WaitLine wait={wait} />
          <HarvestCaution />
        </Sheet>
      ) : null}
    </>
  );
}
