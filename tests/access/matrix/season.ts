import { readSeason, readSeasonCsv } from '@/lib/usecases/season/read-season';
import { committee, type Row } from '../row';

export const season: readonly Row[] = [
  { operation: readSeason, input: () => ({}), allow: committee },
  { operation: readSeasonCsv, input: () => ({ by: 'holding' }), allow: committee },
];
