import type { DueItem } from '@/app/_ui/due-list';
import type { Due } from '@/lib/usecases/week/due';
import { datesItem } from './dates-due';
import { ballotItem } from './ballots-due';
import { boardItem } from './board-due';
import { deliveryItem } from './delivery-due';
import { groundItem } from './ground-due';
import { owesItem } from './owes-due';
import { residueItem } from './residue-due';
import { seedItem } from './seed-due';
import { sheetItem } from './sheet-due';
import { storeItem } from './store-due';
import { trialItem } from './trial-due';
import type { Week } from './week';

/** One thing that wants doing, in words: for the page, and for the weekly letter. */
export function dueItem(due: Due, week: Week): DueItem {
  const { society, today, timeZone } = week;
  switch (due.code) {
    case 'book':
    case 'collect':
    case 'run':
      return deliveryItem(due, week);
    case 'draw-beds':
    case 'record':
      return groundItem(due, society);
    case 'owes':
      return owesItem(due, society);
    case 'sow':
    case 'also-in-window':
    case 'clear-for':
    case 'ready-ground':
    case 'clash':
      return datesItem(due, society, week.units);
    case 'list-seed':
    case 'fetch-seed':
    case 'run-seed':
      return seedItem(due, society, timeZone);
    case 'dig':
      return sheetItem(due, society);
    case 'store-round':
    case 'store-cured':
    case 'store-use-now':
      return storeItem(due, society);
    case 'trial-treat':
    case 'trial-result':
      return trialItem(due, society);
    case 'raise-hand':
      return ballotItem(due, week);
    case 'must-read':
    case 'replies':
    case 'reported':
      return boardItem(due, society, timeZone);
    default:
      return residueItem(due, society, today, timeZone);
  }
}

/** What is late before all else; within both, as they came. */
export function lateFirst(items: readonly DueItem[]): DueItem[] {
  return [...items.filter(({ late }) => late), ...items.filter(({ late }) => !late)];
}
