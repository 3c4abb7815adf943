import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { NoteField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { costWords, unitsWords } from '@/app/_ui/supplier-words';
import { Table } from '@/app/_ui/table';
import { listSuppliers } from '@/lib/usecases/suppliers/read-suppliers';
import { addSupplierAction } from './actions';

export const metadata: Metadata = { title: 'Suppliers' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ retired?: string }> };

export default async function SuppliersPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { retired } = await searchParams;
  const suppliers = await ask(listSuppliers, society);
  return (
    <>
      <PageHead title="Suppliers" lead="Who brings manure and straw, in what loads, and for what.">
        <Link className="button" href={`/${society}/office/order`}>
          What to order
        </Link>
      </PageHead>
      {retired ? (
        <p className="notice kept wide" role="status">
          Retired. Past deliveries stay as they were.
        </p>
      ) : null}
      <Sheet title="All of them" flush>
        {suppliers.length === 0 ? (
          <Empty>None yet. Add one: then what to order is reckoned in their own loads.</Empty>
        ) : null}
        <Table
          caption="Suppliers"
          columns={[{ head: 'supplier' }, { head: 'brings' }]}
          rows={suppliers.map(({ id, name, reach, loads }) => ({
            key: id,
            cells: [
              <div key="name">
                <Link href={`/${society}/office/suppliers/${id}`}>{name}</Link>
                {reach ? <div className="small soft">{reach}</div> : null}
              </div>,
              loads.length ? (
                <ul key="brings" className="plain-list">
                  {loads.map((load) => (
                    <li key={load.id}>
                      {load.material}: {unitsWords(load.of, 1)},{' '}
                      <span className="soft">{costWords(load.priceMinor, load.thanks)}</span>
                    </li>
                  ))}
                </ul>
              ) : (
                'nothing entered yet'
              ),
            ],
          }))}
        />
      </Sheet>
      <Sheet title="Add a supplier">
        <Form action={addSupplierAction.bind(null, society)} writeId={randomUUID()} submit="Add">
          <TextField name="name" label="Name" hint="such as: the stables at the crossroads" />
          <TextField
            name="reach"
            label="How to reach them"
            hint="Only the secretary sees it: never in mail, exports or the book."
          />
          <NoteField name="notes" label="Notes" />
        </Form>
      </Sheet>
    </>
  );
}
