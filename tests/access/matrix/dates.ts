import { readCropDates } from '@/lib/usecases/dates/read-crop-dates';
import { readDates } from '@/lib/usecases/dates/read-dates';
import { recordDay } from '@/lib/usecases/dates/record-day';
import { once } from '../../fixtures/society';
import { everybody, keepers, type Row } from '../row';

export const dates: readonly Row[] = [
  { operation: readDates, input: ({ holdingId }) => ({ holdingId }), allow: keepers },
  { operation: readCropDates, input: () => ({}), allow: everybody },
  {
    operation: recordDay,
    input: ({ plantingId }) => once({ plantingId, what: 'cleared', onDay: new Date().toISOString().slice(0, 10) }),
    allow: keepers,
  },
];
