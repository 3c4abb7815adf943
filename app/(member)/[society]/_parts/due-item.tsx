import type { DueItem } from '@/app/_ui/due-list';
import type { Due } from '@/lib/usecases/week/due';
import { datesItem } from './dates-due';
import { boardItem } from './board-due';
import { deliveryItem } from './delivery-due';
import { groundItem } from './ground-due';
import { owesItem } from './owes-due';
import { residueItem } from './residue-due';
import { sheetItem } from './sheet-due';
import { storeItem } from './store-due';
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
    case 'dig':
      return sheetItem(due, society);
    case 'store-round':
    case 'store-cured':
    case 'store-use-now':
      return storeItem(due, society);
    case 'must-read':
    case 'replies':
    case 'reported':
      return boardItem(due, society, timeZone);
    default:
      return residueItem(due, society, today, timeZone);
  }
}
