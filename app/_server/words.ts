import type { Refusal, RefusalCode } from '@/lib/usecases/refusal';
import { datesWords } from './words/dates';
import { ballotsWords } from './words/ballots';
import { boardWords } from './words/board';
import { deliveriesWords } from './words/deliveries';
import { groundWords } from './words/ground';
import { harvestWords } from './words/harvest';
import { heapWords } from './words/heap';
import { measuresWords } from './words/measures';
import { membersWords } from './words/members';
import { moneyWords } from './words/money';
import { pathsWords } from './words/paths';
import { plotsWords } from './words/plots';
import { recipesWords } from './words/recipes';
import { remindersWords } from './words/reminders';
import { residueWords } from './words/residue';
import { seedWords } from './words/seed';
import type { Words } from './words/shape';
import { sheetsWords } from './words/sheets';
import { suppliersWords } from './words/suppliers';
import { standingWords } from './words/standing';
import { storeWords } from './words/store';
import { trialsWords } from './words/trials';

const words: Words<RefusalCode> = {
  'write-id-used': () => 'This form was already sent for something else. Open the page afresh and try again.',
  ...membersWords,
  ...plotsWords,
  ...pathsWords,
  ...groundWords,
  ...datesWords,
  ...harvestWords,
  ...deliveriesWords,
  ...standingWords,
  ...recipesWords,
  ...sheetsWords,
  ...residueWords,
  ...measuresWords,
  ...moneyWords,
  ...suppliersWords,
  ...heapWords,
  ...seedWords,
  ...remindersWords,
  ...storeWords,
  ...boardWords,
  ...trialsWords,
  ...ballotsWords,
};

/** A refusal in plain words: what was not done, and what would be accepted. */
export function wordsFor(refusal: Refusal): string {
  if (refusal.code === 'input') return refusal.words;
  const { cell, code, numbers = {} } = refusal;
  return `${cell ? `Line ${cell.line}, column “${cell.column}”: ` : ''}${words[code](numbers)}`;
}
