import { formatMonthDay } from '../calendar/month-day';
import { neverClearYears, type SettingKey, settings } from './settings';

/** A setting's value as people say it: with its unit, or the name of the choice. */
export function settingValueWords(key: SettingKey, value: string | number): string {
  const setting = settings[key];
  if (setting.kind === 'choice') return setting.choices.find((choice) => choice.key === value)?.name ?? String(value);
  if (setting.kind === 'month-day') return formatMonthDay(String(value));
  if (key.startsWith('trouble.') && value === neverClearYears) return 'never clear';
  if (key === 'capLoads' && value === 0) return 'no limit';
  return setting.kind === 'whole' ? `${value} ${setting.unit}` : String(value);
}
