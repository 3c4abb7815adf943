import { ballotTables } from './ballot-tables';
import { boardTables } from './board-tables';
import { comparisonTables } from './comparison-tables';
import { deliveryTables } from './delivery-tables';
import type { ExportTable } from './export-table';
import { groundTables } from './ground-tables';
import { peopleTables } from './people-tables';
import { reminderTables } from './reminder-tables';
import { seedTables } from './seed-tables';
import { storeTables } from './store-tables';
import { trialTables } from './trial-tables';

/**
 * Every table of the database: exported column by column, or left out with the reason. A table or a column that is neither
 * fails the tests, so that none is leaked or forgotten unawares.
 */
export const exportTables: readonly ExportTable[] = [
  ...peopleTables,
  ...groundTables,
  ...deliveryTables,
  ...storeTables,
  ...seedTables,
  ...reminderTables,
  ...boardTables,
  ...ballotTables,
  ...comparisonTables,
  ...trialTables,
];
