import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { ResidueCaution } from '@/app/_ui/residue-caution';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readDeliveryTests } from '@/lib/usecases/residue/read-tests';
import { HowItIsDone } from '../../../_parts/residue-how';
import { TestList } from '../../../_parts/residue-list';
import { StartTest } from '../../../_parts/residue-start';

export const metadata: Metadata = { title: 'Residue tests' };

type Props = { params: Promise<{ society: string; delivery: string }>; searchParams: Promise<{ said?: string }> };

export default async function DeliveryTestsPage({ params, searchParams }: Props) {
  const { society, delivery: deliveryId } = await params;
  const { said } = await searchParams;
  const { tests, delivery, today } = await ask(readDeliveryTests, society, { deliveryId });
  return (
    <>
      <PageHead
        title={`Residue tests of ${delivery.name}`}
        lead="Ask for some of it before it comes, or take it from the heap: peas or beans in pots show weedkiller before it is on everybody’s ground. All members see these tests."
      >
        <Link className="button" href={`/${society}/deliveries/${deliveryId}`}>
          Back to the delivery
        </Link>
      </PageHead>
      {said === 'taken-back' ? (
        <p className="notice kept wide" role="status">
          The test is taken back.
        </p>
      ) : null}
      <div className="stack">
        <Sheet title="Tests">
          {tests.length ? <TestList society={society} tests={tests} /> : <Empty>Nobody has tested it yet.</Empty>}
        </Sheet>
        {delivery.state === 'called_off' ? null : (
          <Sheet title="Start a test">
            <StartTest society={society} deliveryId={deliveryId} today={today} />
          </Sheet>
        )}
      </div>
      <div className="stack">
        <HowItIsDone />
        <ResidueCaution />
      </div>
    </>
  );
}
