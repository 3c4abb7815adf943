import 'server-only';
import type { z } from 'zod';
import {
  createSupplierLoad,
  type SupplierLoadFacts,
  type SupplierLoadRecord,
  supplierLoadById,
  updateSupplierLoad,
} from '@/lib/data/supplier';
import type { UnitOfSupplier } from '@/lib/domain/delivery/supplier-unit';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { canRunSociety } from '@/lib/domain/policy/standing';
import {
  addSupplierLoadInput,
  changeSupplierLoadInput,
  retireSupplierLoadInput,
} from '@/lib/schemas/deliveries/supplier';
import { checkDensity } from '../deliveries/check-density';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { openSupplier } from './keep-suppliers';

type Typed = Omit<z.output<typeof addSupplierLoadInput>, 'writeId' | 'supplierId'>;

function unitTyped({ unit, trailerLitres, baleKg, materialKey }: Typed): UnitOfSupplier {
  if (unit === 'trailer')
    return { unit, trailerLitres: trailerLitres ?? refuse('trailer-size-missing', { field: 'trailerLitres' }) };
  if (unit !== 'bales') return { unit };
  if (materialKey !== 'straw') refuse('bales-of-straw', { field: 'unit' });
  return { unit, baleMassG: baleKg ?? refuse('bale-weight-missing', { field: 'baleKg' }) };
}

function factsOf(typed: Typed): SupplierLoadFacts {
  const { materialKey, densityGPerL, price, thanks } = typed;
  if (!materialOf(materialKey)) refuse('material-unknown', { field: 'materialKey' });
  if (densityGPerL !== null) checkDensity(materialKey, densityGPerL, 'densityGPerL');
  return { materialKey, of: unitTyped(typed), densityGPerL, priceMinor: price, thanks };
}

function forBook({ materialKey, of, densityGPerL, priceMinor }: SupplierLoadFacts) {
  return { materialKey, ...of, densityGPerL, priceMinor };
}

// The supplier is locked first, so that nothing is changed of one that is being retired.
async function openLoad(context: WriteContext, id: string): Promise<SupplierLoadRecord> {
  const found = await supplierLoadById(context.tx, context.scope, id);
  const supplier = found && (await openSupplier(context, found.supplierId));
  const load = supplier?.loads.find((one) => one.id === id);
  if (!load) throw new NotFound();
  return load;
}

const thing = 'supplier load';

/** Add what a supplier brings: the material, their unit, its density, and what it costs or what is given for it. */
export const addSupplierLoad = mutation({
  name: 'add-supplier-load',
  allow: canRunSociety,
  input: addSupplierLoadInput,
  write: async (context, { writeId: _, supplierId, ...typed }) => {
    await openSupplier(context, supplierId);
    const facts = factsOf(typed);
    const thingId = await createSupplierLoad(context.tx, context.scope, supplierId, facts);
    context.note({ verb: 'added', thing, thingId, after: { supplierId, ...forBook(facts) } });
    return { supplierLoadId: thingId };
  },
});

/** Change what a supplier brings. What was planned from it stays as it was planned. */
export const changeSupplierLoad = mutation({
  name: 'change-supplier-load',
  allow: canRunSociety,
  input: changeSupplierLoadInput,
  write: async (context, { writeId: _, supplierLoadId, ...typed }) => {
    const before = await openLoad(context, supplierLoadId);
    const facts = factsOf(typed);
    await updateSupplierLoad(context.tx, context.scope, supplierLoadId, facts);
    context.note({ verb: 'changed', thing, thingId: supplierLoadId, before: forBook(before), after: forBook(facts) });
    return { supplierLoadId };
  },
});

/** Retire what a supplier no longer brings. */
export const retireSupplierLoad = mutation({
  name: 'retire-supplier-load',
  allow: canRunSociety,
  input: retireSupplierLoadInput,
  write: async (context, { supplierLoadId }) => {
    await openLoad(context, supplierLoadId);
    await updateSupplierLoad(context.tx, context.scope, supplierLoadId, { retiredAt: context.now });
    context.note({ verb: 'retired', thing, thingId: supplierLoadId });
    return { supplierLoadId };
  },
});
