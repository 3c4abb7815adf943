import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { listDropPoints } from '@/lib/usecases/site/read-paths';
import { listSuppliers } from '@/lib/usecases/suppliers/read-suppliers';
import { FactsFields } from '../../_parts/facts-fields';
import { changeAction } from '../../actions';
import { wallTime } from '@/app/_ui/wall-time';

export const metadata: Metadata = { title: 'Change a delivery' };

export default async function EditPage({ params }: { params: Promise<{ society: string; delivery: string }> }) {
  const { society, delivery: deliveryId } = await params;
  const [{ delivery, members, timeZone }, dropPoints, suppliers] = await Promise.all([
    ask(readGateList, society, { deliveryId }),
    ask(listDropPoints, society),
    ask(listSuppliers, society),
  ]);
  return (
    <>
      <PageHead title={`Change: ${delivery.name}`} />
      <Sheet title="The load">
        <Form action={changeAction.bind(null, society, deliveryId)} writeId={randomUUID()} submit="Save">
          <FactsFields
            given={{ ...delivery, closesAt: wallTime(delivery.closesAt, timeZone) }}
            members={members}
            dropPoints={dropPoints}
            suppliers={suppliers}
          />
        </Form>
      </Sheet>
    </>
  );
}
