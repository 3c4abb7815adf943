import { makeSheet } from '@/lib/usecases/sheets/make-sheet';
import { previewSheet } from '@/lib/usecases/sheets/preview-sheet';
import { listSheets, readSheet } from '@/lib/usecases/sheets/read-sheet';
import { retireSheet } from '@/lib/usecases/sheets/retire-sheet';
import { tickTrench, untickTrench } from '@/lib/usecases/sheets/tick-trench';
import { once } from '../../fixtures/society';
import { keepers, type Row } from '../row';

export const sheets: readonly Row[] = [
  {
    operation: previewSheet,
    input: ({ bedId }) => ({ bedId, wish: { group: 'alliums', rateGPerM2: '4 kg' } }),
    allow: keepers,
  },
  { operation: makeSheet, input: ({ bedId }) => once({ bedId, group: 'alliums' }), allow: keepers },
  { operation: listSheets, input: ({ nextBedId }) => ({ bedId: nextBedId }), allow: keepers },
  { operation: readSheet, input: ({ sheetId }) => ({ sheetId }), allow: keepers },
  { operation: tickTrench, input: ({ sheetId }) => once({ sheetId, trench: '2' }), allow: keepers },
  { operation: untickTrench, input: ({ sheetId }) => once({ sheetId, trench: '1' }), allow: keepers },
  { operation: retireSheet, input: ({ sheetId }) => once({ sheetId, undug: 'yes' }), allow: keepers },
];
