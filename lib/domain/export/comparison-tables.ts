import { id, societyId } from './common-columns';
import type { ExportTable } from './export-table';

/** Comparing notes: who lets their results be compared. */
export const comparisonTables: readonly ExportTable[] = [
  {
    table: 'ResultSharing',
    file: 'result-sharings.csv',
    says: 'Whether a holder lets the results of a holding be compared. Of each holder the newest line holds.',
    columns: {
      ...id,
      ...societyId,
      holdingId: 'holdings.csv',
      byMemberId: 'who said it: members.csv',
      shares: 'true where they agreed',
      at: 'when',
    },
    owner: { column: 'byMemberId', is: 'me' },
  },
];
