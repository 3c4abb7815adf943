import { recordLook } from '@/lib/usecases/deliveries/look-at-heap';
import { readOrder } from '@/lib/usecases/ordering/read-order';
import { addSupplierLoad, changeSupplierLoad, retireSupplierLoad } from '@/lib/usecases/suppliers/keep-supplier-loads';
import { addSupplier, changeSupplier, retireSupplier } from '@/lib/usecases/suppliers/keep-suppliers';
import { listSuppliers, readSupplier, readSupplierOffer } from '@/lib/usecases/suppliers/read-suppliers';
import { once } from '../../fixtures/society';
import { atCollecting, type Row, secretary } from '../row';

const load = { materialKey: 'horse-manure', unit: 'trailer', trailerLitres: '6000' };

export const ordering: readonly Row[] = [
  { operation: readOrder, input: ({ siteId }) => ({ siteId }), allow: secretary },
  { operation: listSuppliers, input: () => ({}), allow: secretary },
  { operation: readSupplier, input: ({ supplierId }) => ({ supplierId }), allow: secretary },
  { operation: readSupplierOffer, input: ({ supplierLoadId }) => ({ supplierLoadId, units: '2' }), allow: secretary },
  { operation: addSupplier, input: () => once({ name: 'n' }), allow: secretary },
  { operation: changeSupplier, input: ({ supplierId }) => once({ supplierId, name: 'n' }), allow: secretary },
  { operation: retireSupplier, input: ({ supplierId }) => once({ supplierId, sure: 'yes' }), allow: secretary },
  { operation: addSupplierLoad, input: ({ supplierId }) => once({ supplierId, ...load }), allow: secretary },
  { operation: changeSupplierLoad, input: ({ supplierLoadId }) => once({ supplierLoadId, ...load }), allow: secretary },
  {
    operation: retireSupplierLoad,
    input: ({ supplierLoadId }) => once({ supplierLoadId, sure: 'yes' }),
    allow: secretary,
  },
  { operation: recordLook, input: ({ sharedId }) => once({ deliveryId: sharedId, loads: '5' }), allow: atCollecting },
];
