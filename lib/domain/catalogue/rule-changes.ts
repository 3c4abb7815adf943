import { addDays, type CalendarDate } from '../calendar/calendar-date';
import { isAllowed, isSettingKey, type SettingKey, settings } from './settings';

/** A value that a society set, from a day on, and the day on which it did so. */
export type SetValue = {
  readonly key: string;
  readonly value: string | number | null;
  readonly from: CalendarDate;
  readonly setOn: CalendarDate;
};

export type RuleChange = {
  readonly key: SettingKey;
  readonly before: string | number;
  readonly after: string | number;
  readonly from: CalendarDate;
};

/** Days for which a change is told after it was made, and after it came into force. */
const toldForDays = 28;

/**
 * The changes of a society's rules that its members should still be told of.
 *
 * Method: each rule's values by the day they count from, the one set last standing for its day; a change is one that
 * differs from the value before it. It is told for four weeks after it was set, and after the day it counts from.
 *
 * @param values  all that was ever set, the earliest set first
 * @param today   the day to tell on
 * @returns       the latest to come into force first; a value that is no longer a rule is passed over
 * @source        common practice
 * @example       interval 3 by default, set to 4 from tomorrow → one change, 3 to 4
 */
export function ruleChanges(values: readonly SetValue[], today: CalendarDate): RuleChange[] {
  const since = addDays(today, 1 - toldForDays);
  const keys = [...new Set(values.map(({ key }) => key))].filter(isSettingKey);
  return keys
    .flatMap((key) =>
      changesOf(
        key,
        values.filter((one) => one.key === key),
      ),
    )
    .filter(({ from, setOn }) => from >= since || setOn >= since)
    .sort((a, b) => (a.from < b.from ? 1 : a.from > b.from ? -1 : 0))
    .map(({ setOn: _, ...change }) => change);
}

function changesOf(key: SettingKey, set: readonly SetValue[]): (RuleChange & { setOn: CalendarDate })[] {
  const byDay = [...new Map(set.map((one) => [one.from, one])).values()].sort((a, b) => (a.from < b.from ? -1 : 1));
  let before = settings[key].value;
  return byDay.flatMap(({ value, from, setOn }) => {
    const after = value !== null && isAllowed(key, value) ? value : settings[key].value;
    const change = { key, before, after, from, setOn };
    before = after;
    return change.before === after ? [] : [change];
  });
}
