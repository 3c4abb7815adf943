import { randomUUID } from 'node:crypto';
import type { Caller } from '@/lib/usecases/operation';
import type { Outcome } from '@/lib/usecases/refusal';
import { addSupplierLoad } from '@/lib/usecases/suppliers/keep-supplier-loads';
import { addSupplier } from '@/lib/usecases/suppliers/keep-suppliers';

type Done = <T>(outcome: Promise<Outcome<T>>) => Promise<T>;

/** Who brings manure and straw to the demo society, for money or in thanks; the id of the stables, which brought all so far. */
export async function loadSuppliers(secretary: Caller, stables: string, done: Done): Promise<string> {
  const once = <T extends object>(typed: T) => ({ writeId: randomUUID(), ...typed });
  const add = async (facts: object, loads: readonly object[]) => {
    const { supplierId } = await done(addSupplier.run(secretary, once(facts)));
    for (const load of loads) await done(addSupplierLoad.run(secretary, once({ supplierId, ...load })));
    return supplierId;
  };
  const id = await add(
    { name: stables, reach: 'ask at the yard before eight', notes: 'Shavings in summer, straw from October.' },
    [{ materialKey: 'horse-manure', unit: 'trailer', trailerLitres: '4500', price: '55' }],
  );
  await add({ name: 'the dairy at Nettlecombe', notes: 'Brings it when the yard is cleared, in September.' }, [
    { materialKey: 'cattle-manure', unit: 'tonnes', price: '14', thanks: 'two trays of eggs' },
  ]);
  await add({ name: 'the farm at Long Acre' }, [
    { materialKey: 'straw', unit: 'bales', baleKg: '13', price: '3.50' },
    { materialKey: 'sheep-manure', unit: 'm3', densityGPerL: '550', thanks: 'a morning’s help at lambing' },
  ]);
  return id;
}
