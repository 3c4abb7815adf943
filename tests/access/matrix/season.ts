import { exportSociety, readOwnArchive, readSocietyArchive } from '@/lib/usecases/export/export-society';
import { readExport } from '@/lib/usecases/export/read-export';
import { readSeason, readSeasonCsv } from '@/lib/usecases/season/read-season';
import { once } from '../../fixtures/society';
import { committee, everybody, type Row, secretary } from '../row';

export const season: readonly Row[] = [
  { operation: readSeason, input: () => ({}), allow: committee },
  { operation: readSeasonCsv, input: () => ({ by: 'holding' }), allow: committee },
  { operation: readExport, input: () => ({}), allow: secretary },
  { operation: exportSociety, input: () => once({}), allow: secretary },
  { operation: readSocietyArchive, input: () => ({}), allow: secretary },
  { operation: readOwnArchive, input: () => ({}), allow: everybody },
];
