import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { thanksWords, unitsWords } from '@/app/_ui/supplier-words';
import { listMembers } from '@/lib/usecases/members/list-members';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { readSettings } from '@/lib/usecases/settings/settings';
import { listDropPoints } from '@/lib/usecases/site/read-paths';
import { listSuppliers, readSupplierOffer } from '@/lib/usecases/suppliers/read-suppliers';
import { FactsFields } from '../_parts/facts-fields';
import { wallTime } from '@/app/_ui/wall-time';
import { planAction } from '../actions';

export const metadata: Metadata = { title: 'Plan a delivery' };

type Search = { load?: string; units?: string; with?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function NewDeliveryPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { load, units, with: withId } = await searchParams;
  const [members, { values }, dropPoints, suppliers, offer, first] = await Promise.all([
    ask(listMembers, society),
    ask(readSettings, society),
    ask(listDropPoints, society),
    ask(listSuppliers, society),
    load ? ask(readSupplierOffer, society, { supplierLoadId: load, units }) : null,
    withId ? ask(readGateList, society, { deliveryId: withId }) : null,
  ]);
  const usual = { closesAt: '', capLoads: values.capLoads || null };
  const given = first
    ? sameLorry(first)
    : { ...offer, ...(offer ? { thanks: thanksWords(offer.thanks, offer.units) } : {}), ...usual };
  const from = offer ? `${unitsWords(offer.of, offer.units)} from ${offer.supplier}. ` : '';
  return (
    <>
      <PageHead
        title={first ? `What comes with ${first.delivery.name}` : 'Plan a delivery'}
        lead={
          first
            ? 'Another heap on the same lorry: booked, shared out and settled by itself. Nobody sees it before you open it.'
            : `${from}Nobody sees it before you open it for booking.`
        }
      />
      <Sheet title="The load">
        <Form action={planAction.bind(null, society)} writeId={randomUUID()} submit="Plan it">
          {first ? <input type="hidden" name="withId" value={first.delivery.id} /> : null}
          <FactsFields
            given={given}
            members={members.filter(({ isHere }) => isHere)}
            dropPoints={dropPoints}
            suppliers={suppliers}
          />
        </Form>
      </Sheet>
    </>
  );
}

// The lorry's own facts are the same; the material, its amount and its price are asked afresh.
function sameLorry({ delivery, timeZone }: Awaited<ReturnType<typeof readGateList.run>>) {
  const { arrivesOn, collectByOn, supplier, supplierId, dropPoint, dropPointId, keyHolderId, gateNote, closesAt } =
    delivery;
  const lorry = { arrivesOn, collectByOn, supplier, supplierId, dropPoint, dropPointId, keyHolderId, gateNote };
  return { ...lorry, closesAt: wallTime(closesAt, timeZone) };
}
