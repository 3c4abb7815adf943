import 'server-only';
import { formatMonthDay, parseMonthDay } from '@/lib/domain/calendar/month-day';
import type { Setting } from '@/lib/domain/catalogue/setting-row';
import { isAllowed, type SettingKey, type SettingValues, settings } from '@/lib/domain/catalogue/settings';
import { refuse } from '../refusal';

/** A rule's value as it was typed; what is out of its bounds is refused beside its field, with the bounds. */
export function typedSetting(key: SettingKey, text: string, field: string): string | number {
  const setting = settings[key];
  const typed = typedAs(setting, text);
  if (isAllowed(key, typed)) return typed;
  if (setting.kind === 'choice') {
    const names = setting.choices.map(({ name }) => `“${name}”`).join(' or ');
    refuse('setting-no-such-choice', { field, numbers: { names } });
  }
  const numbers =
    setting.kind === 'whole'
      ? { least: setting.least, most: setting.most, unit: setting.unit }
      : { least: boundOf(setting, 'earliest', '01-01'), most: boundOf(setting, 'latest', '12-31'), unit: '' };
  return refuse('setting-out-of-range', { field, numbers });
}

/** Whether the season's window would still open before it shuts, with one rule set to a value. */
export function windowWith(values: SettingValues, key: SettingKey, value: string | number) {
  const { seasonFrom, seasonTo }: SettingValues = { ...values, [key]: value };
  return { isOpen: seasonFrom <= seasonTo, numbers: { seasonFrom, seasonTo } };
}

// A choice may be typed by its name, as it is read.
function typedAs(setting: Setting, text: string): string | number {
  if (setting.kind === 'whole') return /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (setting.kind === 'month-day') return parseMonthDay(text) ?? text;
  return setting.choices.find(({ name }) => name.toLowerCase() === text.toLowerCase())?.key ?? text;
}

function boundOf(setting: Setting, end: 'earliest' | 'latest', otherwise: string): string {
  return formatMonthDay((setting.kind === 'month-day' ? setting[end] : undefined) ?? otherwise);
}
