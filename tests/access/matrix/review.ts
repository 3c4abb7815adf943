import { readLandlordReview, readReview } from '@/lib/usecases/review/read-review';
import { committee, everybody, type Row } from '../row';

export const review: readonly Row[] = [
  { operation: readReview, input: () => ({}), allow: everybody },
  { operation: readLandlordReview, input: () => ({}), allow: committee },
];
