import type { Dated } from '@/lib/domain/reminders/dated';
import { ballotsDated } from './dated-ballots';
import { datesDated } from './dated-dates';
import { deliveriesDated } from './dated-deliveries';
import { groundDated } from './dated-ground';
import { seedDated } from './dated-seed';
import type { DatedTable, DatedWords } from './dated-shape';
import { storeDated } from './dated-store';
import { trialsDated } from './dated-trials';

const tables: DatedTable = {
  ...ballotsDated,
  ...datesDated,
  ...deliveriesDated,
  ...groundDated,
  ...seedDated,
  ...storeDated,
  ...trialsDated,
};

/** Something with a day in words; what nobody has words for any more is still shown by its code. */
export function datedWords({ code, facts }: Dated): DatedWords {
  return tables[code]?.(facts) ?? { title: code, note: '', path: '' };
}
