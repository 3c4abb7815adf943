import 'server-only';
import { z } from 'zod';
import { type ExportOf, inSnapshot } from '@/lib/data/export';
import { holdingsOfMember } from '@/lib/data/holding';
import { canSeePrivateRecords } from '@/lib/domain/policy/holding';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { writeArchive } from '@/lib/platform/archive';
import { exportInput } from '@/lib/schemas/export/export';
import { mutation, query, type ReadContext } from '../operation';
import { archiveFiles } from './archive-files';

/** Note in the book that all of the society was taken out. Who may note it may fetch it. */
export const exportSociety = mutation({
  name: 'export-society',
  allow: canRunSociety,
  input: exportInput,
  write: async ({ scope, today, note }) => {
    note({ verb: 'exported', thing: 'society', thingId: scope.societyId, after: { day: today } });
    return { day: today };
  },
});

/** All that the society has on record, as one archive. */
export const readSocietyArchive = query({
  name: 'read-society-archive',
  allow: canRunSociety,
  input: z.object({}),
  read: (context) => archiveOf(context, { archive: 'society', holdingIds: [] }),
});

/** What the society has on record of the viewer and of the ground they hold today, with their own notes. */
export const readOwnArchive = query({
  name: 'read-own-archive',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
    const holdingIds = holdings.filter((holding) => canSeePrivateRecords(scope, holding)).map(({ id }) => id);
    return archiveOf(context, { archive: 'own', holdingIds });
  },
});

async function archiveOf({ scope, today }: ReadContext, whose: ExportOf) {
  const archive = await inSnapshot((tx) => writeArchive(archiveFiles({ tx, scope, today }, whose)));
  const name = `${scope.slug}${whose.archive === 'own' ? '-own' : ''}-${today}.zip`;
  return { name, archive };
}
