import 'server-only';
import { createSupplier, lockSupplier, type SupplierRecord, suppliersOf, updateSupplier } from '@/lib/data/supplier';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { addSupplierInput, changeSupplierInput, retireSupplierInput } from '@/lib/schemas/deliveries/supplier';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

/** A supplier, locked until the transaction ends. */
export async function openSupplier({ tx, scope }: WriteContext, id: string): Promise<SupplierRecord> {
  const supplier = await lockSupplier(tx, scope, id);
  if (!supplier) throw new NotFound();
  return supplier;
}

async function refuseTwin({ tx, scope }: WriteContext, name: string, id: string | null): Promise<void> {
  const alike = (one: SupplierRecord) => one.id !== id && one.name.toLowerCase() === name.toLowerCase();
  if ((await suppliersOf(tx, scope)).some(alike)) refuse('supplier-name-taken', { field: 'name' });
}

// The book holds neither names nor how anybody is reached: only that they were changed.
const thing = 'supplier';

/** Add a supplier: who brings manure or straw. */
export const addSupplier = mutation({
  name: 'add-supplier',
  allow: canRunSociety,
  input: addSupplierInput,
  write: async (context, { writeId: _, ...facts }) => {
    await refuseTwin(context, facts.name, null);
    const supplierId = await createSupplier(context.tx, context.scope, facts);
    context.note({ verb: 'added', thing, thingId: supplierId });
    return { supplierId };
  },
});

/** Change a supplier’s name, how they are reached, or the notes. */
export const changeSupplier = mutation({
  name: 'change-supplier',
  allow: canRunSociety,
  input: changeSupplierInput,
  write: async (context, { writeId: _, supplierId, ...facts }) => {
    const before = await openSupplier(context, supplierId);
    await refuseTwin(context, facts.name, supplierId);
    await updateSupplier(context.tx, context.scope, supplierId, facts);
    const changed = (['name', 'reach', 'notes'] as const).filter((key) => facts[key] !== before[key]);
    context.note({ verb: 'changed', thing, thingId: supplierId, after: { changed } });
    return { supplierId };
  },
});

/** Retire a supplier: nothing is planned from them any more; past deliveries stay as they were. */
export const retireSupplier = mutation({
  name: 'retire-supplier',
  allow: canRunSociety,
  input: retireSupplierInput,
  write: async (context, { supplierId }) => {
    await openSupplier(context, supplierId);
    await updateSupplier(context.tx, context.scope, supplierId, { retiredAt: context.now });
    context.note({ verb: 'retired', thing, thingId: supplierId });
    return { supplierId };
  },
});
