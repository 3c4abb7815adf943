import 'server-only';
import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import { type Crop, crops } from '@/lib/domain/catalogue/crops';
import { groupCrops } from '@/lib/domain/catalogue/group-crops';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** The crops a society knows, by key: the catalogue's, and its own over and beside them. */
export async function cropsOf(db: Db, scope: Scope): Promise<ReadonlyMap<string, Crop>> {
  const own = await db.societyCrop.findMany({ where: { societyId: scope.societyId, retiredAt: null } });
  const added = own.map(
    (row): Crop => ({
      key: row.key,
      name: row.name,
      binomial: row.binomial,
      family: row.family,
      cropGroup: row.cropGroup as CropGroup,
      hostGroups: row.hostGroups,
      life: row.life as Crop['life'],
      stands: row.cropGroup === 'standing' && row.life === 'perennial',
      takesManure: row.takesManure,
    }),
  );
  return new Map<string, Crop>([...crops, ...groupCrops, ...added].map((crop) => [crop.key, crop]));
}

/** Add a crop of the society's own, or set its own values over a catalogue crop of the same key. */
export async function saveCrop(tx: Tx, scope: Scope, crop: Omit<Crop, 'stands'>): Promise<void> {
  const { societyId } = scope;
  const data = { ...crop, hostGroups: [...crop.hostGroups], retiredAt: null };
  await tx.societyCrop.upsert({
    where: { societyId_key: { societyId, key: crop.key } },
    create: { ...data, societyId },
    update: data,
  });
}

/** The keys that the society added or changed. */
export async function ownCropKeys(db: Db, scope: Scope): Promise<ReadonlySet<string>> {
  const rows = await db.societyCrop.findMany({
    where: { societyId: scope.societyId, retiredAt: null },
    select: { key: true },
  });
  return new Set(rows.map(({ key }) => key));
}
