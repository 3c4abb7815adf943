import { readResults } from '@/lib/usecases/notes/read-results';
import { readSharing } from '@/lib/usecases/notes/read-sharing';
import { saySharing } from '@/lib/usecases/notes/say-sharing';
import { once } from '../../fixtures/society';
import { everybody, holders, type Row } from '../row';

export const notes: readonly Row[] = [
  // Whose results an answer holds, is for the answer: everybody may ask.
  { operation: readResults, input: () => ({}), allow: everybody },
  { operation: readSharing, input: () => ({}), allow: everybody },
  {
    operation: saySharing,
    input: ({ holdingId }) => once({ holdingId, shares: 'yes' }),
    allow: holders,
    isOwn: true,
  },
];
