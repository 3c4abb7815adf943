import 'server-only';
import { z } from 'zod';
import { cropsOf, ownCropKeys, saveCrop as writeCrop } from '@/lib/data/crop';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { saveCropInput } from '@/lib/schemas/ground/crop';
import { mutation, query } from '../operation';
import { refuse } from '../refusal';

/** The crops the society knows, and which of them are its own. */
export const listCrops = query({
  name: 'list-crops',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope }) => {
    const [crops, own] = await Promise.all([cropsOf(db, scope), ownCropKeys(db, scope)]);
    return [...crops.values()]
      .map((crop) => ({ ...crop, own: own.has(crop.key) }))
      .sort((a, b) => a.name.localeCompare(b.name, 'en-GB'));
  },
});

/** Add a crop, or set the society's own values over one of the catalogue's. */
export const saveCrop = mutation({
  name: 'save-crop',
  allow: canRunSociety,
  input: saveCropInput,
  write: async ({ tx, scope, note }, { writeId: _, key: typedKey, hostGroup, ...crop }) => {
    const crops = await cropsOf(tx, scope);
    const key = typedKey ?? crop.name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-');
    const before = crops.get(key);
    const twin = [...crops.values()].find(
      (one) => one.key !== key && one.name.toLowerCase() === crop.name.toLowerCase(),
    );
    if (twin || (before && !typedKey)) refuse('crop-name-taken', { field: 'name', numbers: { name: crop.name } });
    const hostGroups = hostGroup ? [hostGroup] : [];
    await writeCrop(tx, scope, { ...crop, key, hostGroups });
    const facts = (one: { cropGroup: string; hostGroups: readonly string[]; takesManure: boolean }) => ({
      group: one.cropGroup,
      hosts: [...one.hostGroups],
      takesManure: one.takesManure,
    });
    note({
      verb: before ? 'changed' : 'added',
      thing: 'crop',
      thingId: null,
      before: before ? facts(before) : null,
      after: { key, ...facts({ ...crop, hostGroups }) },
    });
    return { key };
  },
});
