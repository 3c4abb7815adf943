import { spellOf } from '@/lib/domain/exertion/spell';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import type { DiggingPlan, PlanNote } from '@/lib/domain/exertion/plan-days';
import type { Session } from '@/lib/domain/exertion/session';
import { formatMinutes } from '@/lib/domain/quantity/minutes';
import type { Portion } from '@/lib/domain/sheet/portion';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { trenchesWords, trenchWord } from './sheet-words';

/** What today's portion is: trenches 4 and 5, or a beginning of one that is longer than a session. */
export function portionWords({ today }: Portion, order: SheetOrder): string {
  const word = trenchWord(order);
  const whole = today.filter(({ finishes }) => finishes).map(({ trench }) => trench);
  const begun = today.find(({ finishes }) => !finishes);
  const many = word === 'trench' ? 'trenches' : 'strips';
  const [first, last] = [whole[0], whole.at(-1)];
  const done =
    first === undefined ? '' : first === last ? `${word} ${first}` : `${many} ${rangeWords(first, last ?? first)}`;
  if (!begun) return done;
  const part = `${Math.floor(begun.minutes)} of its ${Math.ceil(begun.ofMinutes)} minutes`;
  return done ? `${done}, and begin ${begun.trench}` : `begin ${word} ${begun.trench}: ${part}`;
}

function rangeWords(first: number, last: number): string {
  return last === first + 1 ? `${first} and ${last}` : `${first} to ${last}`;
}

/** What the minutes are spent on: digging, unless nothing is dug. */
function workWord({ method }: Pick<SheetOrder, 'method'>): string {
  return diggingMethodOf(method).loosenedSpits > 0 ? 'digging' : 'work';
}

/** So many sessions of it. */
export function sessionsWords(sessions: number, order: SheetOrder): string {
  return `${sessions} ${sessions === 1 ? 'session' : 'sessions'} of ${workWord(order)}`;
}

/** A session as it is followed with a watch. */
export function sessionWords(session: Session, order: SheetOrder): string {
  const { times, diggingMin, restMin } = spellOf(session);
  const spell = `${diggingMin} min of ${workWord(order)}${restMin ? `, then ${restMin} min of rest` : ''}`;
  return times === 1 ? spell : `${times} times ${spell}`;
}

/** Days needed against days left. */
export function inTimeWords({ plan, daysLeft }: Portion, until: string): string {
  const { inTime, sessions, daysNeeded } = plan;
  const need = `${sessions} ${sessions === 1 ? 'session' : 'sessions'}, ${daysNeeded} ${daysNeeded === 1 ? 'day' : 'days'} from first to last`;
  if (daysLeft === 0) return `${need}. The last day for it was ${until}: late, but better late than sticking wet.`;
  const left = `${daysLeft} ${daysLeft === 1 ? 'day is' : 'days are'} left until ${until}`;
  if (inTime.code === 'enough') return `${need}; ${left}.`;
  const often = inTime.sessionsPerWeekEnough;
  return `${need}; ${left}: ${inTime.shortByDays} too few. ${often ? `${often} sessions a week would do.` : 'Ask for help, or make it a smaller job.'}`;
}

const notes: Readonly<Record<PlanNote, string>> = {
  'group-averages': 'Energy costs are averages of a group of adults of 19 to 59, and no one person’s.',
  'no-energy-figure':
    'For your age no energy figure is published, or you have not said it: so it goes by the clock, and rests as long as you dig.',
  'session-shortened': 'Sessions are shorter than you gave: half an hour at first, an hour later.',
  'weight-assumed': 'You have not said what you weigh: 70 kg is taken.',
};

/** What must be said beside the figures of a pace. */
export function paceNotes(plan: DiggingPlan): string[] {
  return plan.notes.map((note) => notes[note]);
}

/** All the digging that is left, rests apart. */
export function minutesWords({ plan }: Portion, order: SheetOrder, trenches: number): string {
  return `${formatMinutes(plan.minutes)} of ${workWord(order)} in ${trenchesWords(order, trenches)}, rests apart`;
}
