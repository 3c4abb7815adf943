import type { Row } from '../row';
import { dates } from './dates';
import { ballots } from './ballots';
import { board } from './board';
import { deliveries } from './deliveries';
import { ground } from './ground';
import { harvest } from './harvest';
import { measures } from './measures';
import { members } from './members';
import { money } from './money';
import { notes } from './notes';
import { paths } from './paths';
import { recipes } from './recipes';
import { reminders } from './reminders';
import { residue } from './residue';
import { review } from './review';
import { ordering } from './ordering';
import { season } from './season';
import { seed } from './seed';
import { sheets } from './sheets';
import { store } from './store';
import { trials } from './trials';
import { waiting } from './waiting';

/** Every operation there is, with who may; a missing one fails the suite. */
export const rows: readonly Row[] = [
  ...members,
  ...ground,
  ...harvest,
  ...recipes,
  ...sheets,
  ...deliveries,
  ...waiting,
  ...residue,
  ...measures,
  ...money,
  ...paths,
  ...ordering,
  ...season,
  ...dates,
  ...seed,
  ...reminders,
  ...store,
  ...board,
  ...trials,
  ...notes,
  ...ballots,
  ...review,
];
