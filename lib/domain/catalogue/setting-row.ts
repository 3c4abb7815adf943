import { isMonthDay } from '../calendar/month-day';
import type { SourceKey } from './sources';

export type WholeSetting = {
  readonly kind: 'whole';
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  /** A rate of manure is given by the kilogram or the pound, of anything else by the gram or the ounce. */
  readonly typedIn?: 'kg';
};
export type ChoiceSetting = {
  readonly kind: 'choice';
  readonly value: string;
  readonly choices: readonly { readonly key: string; readonly name: string }[];
};
export type MonthDaySetting = {
  readonly kind: 'month-day';
  readonly value: string;
  /** The first and the last day of the year that make sense, where not every day does. */
  readonly earliest?: string;
  readonly latest?: string;
};

type Texts = { readonly name: string; readonly says: string; readonly source: SourceKey };

/** A value that may be set by a society or a member: its default, what it may be, what it is for, and its source. */
export type Setting = (WholeSetting | ChoiceSetting | MonthDaySetting) & Texts;

/** What a setting may be and is for, before anybody says what it is. */
export type SettingShape = (
  | Omit<WholeSetting, 'value'>
  | Omit<ChoiceSetting, 'value'>
  | Omit<MonthDaySetting, 'value'>
) &
  Omit<Texts, 'source'>;

/** Whether a value may be set: a whole number within the bounds, one of the choices, or a day of every year. */
export function allows(setting: WholeSetting | ChoiceSetting | MonthDaySetting, value: unknown): boolean {
  if (setting.kind === 'whole')
    return Number.isSafeInteger(value) && (value as number) >= setting.least && (value as number) <= setting.most;
  if (setting.kind === 'choice') return setting.choices.some((choice) => choice.key === value);
  const { earliest = '01-01', latest = '12-31' } = setting;
  return isMonthDay(value) && value >= earliest && value <= latest;
}
