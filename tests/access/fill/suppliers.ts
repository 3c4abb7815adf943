import { addSupplierLoad } from '@/lib/usecases/suppliers/keep-supplier-loads';
import { addSupplier } from '@/lib/usecases/suppliers/keep-suppliers';
import { recordLook } from '@/lib/usecases/deliveries/look-at-heap';
import { done, once } from '../../fixtures/society';
import type { Ids } from '../row';
import type { Members, Word } from './members';

/** A supplier with one load, and a look at the heap that is being collected. */
export async function makeSupplier(
  word: Word,
  members: Members,
  { sharedId }: Pick<Ids, 'sharedId'>,
): Promise<Pick<Ids, 'supplierId' | 'supplierLoadId'>> {
  const secretary = members.secretary.caller;
  const facts = { name: word('supplier name'), reach: word('supplier reach'), notes: word('supplier remarks') };
  const { supplierId } = await done(addSupplier.run(secretary, once(facts)));
  const load = { materialKey: 'horse-manure', unit: 'm3', price: '40', thanks: word('supplier thanks') };
  const { supplierLoadId } = await done(addSupplierLoad.run(secretary, once({ supplierId, ...load })));
  if (sharedId) await done(recordLook.run(members.holder.caller, once({ deliveryId: sharedId, loads: '8' })));
  return { supplierId, supplierLoadId };
}
