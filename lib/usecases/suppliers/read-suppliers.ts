import 'server-only';
import { z } from 'zod';
import { deliveriesOf, type DeliveryRecord } from '@/lib/data/delivery';
import { type ResidueTestRecord, residueTestsOf } from '@/lib/data/residue-test';
import { type SupplierLoadRecord, supplierById, supplierLoadById, suppliersOf } from '@/lib/data/supplier';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { asBrought } from '@/lib/domain/delivery/as-brought';
import { amountOf } from '@/lib/domain/delivery/supplier-unit';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { shownTest } from '../residue/shown-test';

/** A load's material by name, and its density: the supplier's own, or the catalogue's. */
export function titledLoad(load: SupplierLoadRecord) {
  const material = materialOf(load.materialKey);
  return {
    ...load,
    material: material?.name ?? load.materialKey,
    usualGPerL: load.densityGPerL ?? material?.densityGPerL ?? 1,
  };
}

/** The suppliers with what they bring, for whoever runs the society. */
export const listSuppliers = query({
  name: 'list-suppliers',
  allow: canRunSociety,
  input: z.object({}),
  read: async ({ db, scope }) =>
    (await suppliersOf(db, scope)).map((supplier) => ({ ...supplier, loads: supplier.loads.map(titledLoad) })),
});

/** One supplier: how to reach them, what they bring, and how their past deliveries turned out. */
export const readSupplier = query({
  name: 'read-supplier',
  allow: canRunSociety,
  input: z.object({ supplierId: z.uuid() }),
  read: async (context, { supplierId }) => {
    const { db, scope, now } = context;
    const supplier = await supplierById(db, scope, supplierId);
    if (!supplier) throw new NotFound();
    const own = (await deliveriesOf(db, scope, now)).filter((one) => one.supplierId === supplierId);
    const tests = own.length ? await residueTestsOf(db, scope, 'own-and-deliveries') : [];
    const deliveries = own.map((one) => pastDelivery(context, one, tests));
    const { loads, ...facts } = supplier;
    return { supplier: { ...facts, loads: loads.map(titledLoad) }, deliveries, brings: byMaterial(own) };
  },
});

function pastDelivery({ scope, today }: ReadContext, one: DeliveryRecord, tests: readonly ResidueTestRecord[]) {
  const { id, name, state, arrivesOn, expectedLoads, heapLoads, priceMinor, thanks, materialKey } = one;
  return {
    ...{ id, name, state, arrivesOn, heapLoads, priceMinor, thanks, orderedLoads: expectedLoads },
    material: materialOf(materialKey)?.name ?? materialKey,
    loadMinor: heapLoads && priceMinor ? Math.round(priceMinor / heapLoads) : null,
    tests: tests
      .filter(({ deliveryId }) => deliveryId === id)
      .map((test) => shownTest(scope, test, today))
      .map(({ id: testId, name: tested, judged, isEnded }) => ({ testId, tested, verdict: judged.verdict, isEnded })),
  };
}

// Loads of different materials may be counted in different units, so each is told by itself.
function byMaterial(deliveries: readonly DeliveryRecord[]) {
  const measured = deliveries.flatMap(({ materialKey, expectedLoads: orderedLoads, heapLoads, state }) =>
    heapLoads !== null && orderedLoads > 0 && state !== 'called_off' ? [{ materialKey, orderedLoads, heapLoads }] : [],
  );
  return [...new Set(measured.map(({ materialKey }) => materialKey))].flatMap((key) => {
    const brought = asBrought(measured.filter(({ materialKey }) => materialKey === key));
    return brought ? [{ key, material: materialOf(key)?.name ?? key, ...brought }] : [];
  });
}

/** The facts of a delivery of so many of a supplier's units, to begin planning it from. */
export const readSupplierOffer = query({
  name: 'read-supplier-offer',
  allow: canRunSociety,
  input: z.object({ supplierLoadId: z.uuid(), units: z.coerce.number().int().min(1).max(999).catch(1) }),
  read: async ({ db, scope }, { supplierLoadId, units }) => {
    const load = await supplierLoadById(db, scope, supplierLoadId);
    const supplier = load && (await supplierById(db, scope, load.supplierId));
    if (!supplier) throw new NotFound();
    const { of, materialKey, usualGPerL, priceMinor, thanks } = titledLoad(load);
    return {
      supplierId: supplier.id,
      supplier: supplier.name,
      units,
      of,
      materialKey,
      thanks,
      amount: amountOf(of, units),
      baleMassG: of.unit === 'bales' ? of.baleMassG : null,
      densityGPerL: usualGPerL,
      priceMinor: (priceMinor ?? 0) * units,
    };
  },
});
