import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { thanksWords, unitsWords } from '@/app/_ui/supplier-words';
import { listMembers } from '@/lib/usecases/members/list-members';
import { readPaths } from '@/lib/usecases/site/read-paths';
import { listSuppliers, readSupplierOffer } from '@/lib/usecases/suppliers/read-suppliers';
import { FactsFields } from '../_parts/facts-fields';
import { planAction } from '../actions';

export const metadata: Metadata = { title: 'Plan a delivery' };

type Search = { load?: string; units?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function NewDeliveryPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { load, units } = await searchParams;
  const [members, { dropPoints }, suppliers, offer] = await Promise.all([
    ask(listMembers, society),
    ask(readPaths, society),
    ask(listSuppliers, society),
    load ? ask(readSupplierOffer, society, { supplierLoadId: load, units }) : null,
  ]);
  return (
    <>
      <PageHead
        title="Plan a delivery"
        lead={`${offer ? `${unitsWords(offer.of, offer.units)} from ${offer.supplier}. ` : ''}Nobody sees it before you open it for booking.`}
      />
      <Sheet title="The load">
        <Form action={planAction.bind(null, society)} writeId={randomUUID()} submit="Plan it">
          <FactsFields
            given={{ ...offer, closesAt: '' }}
            members={members.filter(({ isHere }) => isHere)}
            dropPoints={dropPoints}
            suppliers={suppliers}
          />
        </Form>
      </Sheet>
    </>
  );
}
