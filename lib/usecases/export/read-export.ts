import 'server-only';
import { z } from 'zod';
import { lastExported } from '@/lib/data/export';
import { tablesFor } from '@/lib/domain/export/export-table';
import { exportTables } from '@/lib/domain/export/export-tables';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { dayIn } from '@/lib/platform/clock';
import { query } from '../operation';

/** What the society's archive would hold, and when it was last taken out. */
export const readExport = query({
  name: 'read-export',
  allow: canRunSociety,
  input: z.object({}),
  read: async ({ db, scope }) => {
    const last = await lastExported(db, scope);
    const files = tablesFor(exportTables, 'society').map(({ file, says }) => ({ file, says }));
    return { files, lastOn: last && dayIn(scope.timeZone, last) };
  },
});
