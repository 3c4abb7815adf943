import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { NoteField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { readSupplier } from '@/lib/usecases/suppliers/read-suppliers';
import { LoadFields } from '../_parts/load-fields';
import { LoadSheet } from '../_parts/load-sheet';
import { PastDeliveries } from '../_parts/past-deliveries';
import { addLoadAction, changeSupplierAction, retireSupplierAction } from '../actions';

export const metadata: Metadata = { title: 'Supplier' };

type Props = { params: Promise<{ society: string; supplier: string }>; searchParams: Promise<{ said?: string }> };

export default async function SupplierPage({ params, searchParams }: Props) {
  const { society, supplier: supplierId } = await params;
  const { said } = await searchParams;
  const read = await ask(readSupplier, society, { supplierId });
  const { name, reach, notes, loads } = read.supplier;
  const bound = [null, society, supplierId] as const;
  return (
    <>
      <PageHead title={name} {...(reach ? { lead: reach } : {})}>
        <Link className="button" href={`/${society}/office/suppliers`}>
          All suppliers
        </Link>
        <Link className="button" href={`/${society}/office/order`}>
          What to order
        </Link>
      </PageHead>
      {said === 'load-retired' ? (
        <p className="notice kept wide" role="status">
          Retired. Deliveries that were planned from it stay as they are.
        </p>
      ) : null}
      <div className="stack">
        {loads.length === 0 ? (
          <Empty>Add what they bring, in their own loads, and deliveries are planned from it.</Empty>
        ) : null}
        {loads.map((load) => (
          <LoadSheet key={load.id} society={society} supplierId={supplierId} load={load} />
        ))}
        <Sheet title="Add what they bring">
          <Form action={addLoadAction.bind(...bound)} writeId={randomUUID()} submit="Add">
            <LoadFields />
          </Form>
        </Sheet>
      </div>
      <Sheet title="The supplier">
        <Form action={changeSupplierAction.bind(...bound)} writeId={randomUUID()} submit="Save">
          <TextField name="name" label="Name" value={name} />
          <TextField
            name="reach"
            label="How to reach them"
            value={reach ?? ''}
            hint="Only the secretary sees it: never in mail, exports or the book."
          />
          <NoteField name="notes" label="Notes" value={notes ?? ''} />
        </Form>
        <Reason ask="Retire this supplier">
          <Form action={retireSupplierAction.bind(...bound)} writeId={randomUUID()} submit="Retire" danger>
            <p>Nothing is planned from them any more. Past deliveries stay as they were.</p>
            <TickField name="sure" label="Yes, they bring nothing more" />
          </Form>
        </Reason>
      </Sheet>
      <PastDeliveries society={society} read={read} />
    </>
  );
}
