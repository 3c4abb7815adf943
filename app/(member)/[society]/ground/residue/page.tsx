import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { ResidueCaution } from '@/app/_ui/residue-caution';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readOwnTests } from '@/lib/usecases/residue/read-tests';
import { HowItIsDone } from '../../_parts/residue-how';
import { TestList } from '../../_parts/residue-list';
import { StartTest } from '../../_parts/residue-start';

export const metadata: Metadata = { title: 'Residue tests' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ said?: string }> };

export default async function OwnTestsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { said } = await searchParams;
  const { tests, today } = await ask(readOwnTests, society);
  return (
    <>
      <PageHead
        title="Residue tests of your own manure"
        lead="Bought-in manure can carry weedkiller that went through hay and horse. Peas or beans in pots show it before your crops do. Nobody else sees these."
      >
        <Link className="button" href={`/${society}/ground`}>
          Back to the ground
        </Link>
        <Link className="button" href={`/${society}/deliveries`}>
          Tests of a delivery
        </Link>
      </PageHead>
      {said === 'taken-back' ? (
        <p className="notice kept wide" role="status">
          The test is taken back.
        </p>
      ) : null}
      <div className="stack">
        <Sheet title="Your tests">
          {tests.length ? (
            <TestList society={society} tests={tests} />
          ) : (
            <Empty>None yet. Set out six pots, and start one below.</Empty>
          )}
        </Sheet>
        <Sheet title="Start a test">
          <StartTest society={society} deliveryId={null} today={today} />
        </Sheet>
      </div>
      <div className="stack">
        <HowItIsDone />
        <ResidueCaution />
      </div>
    </>
  );
}
