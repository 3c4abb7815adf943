import 'server-only';
import { z } from 'zod';
import { appendSetting, settingHistory, settingsOn } from '@/lib/data/setting';
import { isAllowed, settings, type SettingKey, type SettingValues } from '@/lib/domain/catalogue/settings';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { changeSettingInput } from '@/lib/schemas/settings/change-setting';
import { mutation, query } from '../operation';
import { refuse } from '../refusal';

/** The society's rules: what holds today, and every value that was ever set. Everybody may read them. */
export const readSettings = query({
  name: 'read-settings',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => ({
    today,
    values: await settingsOn(db, scope, today),
    history: await settingHistory(db, scope, 'rules'),
  }),
});

/** Set one of the society's rules from a day on. Deliveries that are open keep the values they were opened with. */
export const changeSetting = mutation({
  name: 'change-setting',
  allow: canRunSociety,
  input: changeSettingInput,
  write: async ({ tx, scope, today, now, note }, { key, value, from }) => {
    const typed = valueOf(key, value);
    if (from < today) refuse('setting-in-the-past', { field: 'from' });
    const values: SettingValues = { ...(await settingsOn(tx, scope, from)), [key]: typed };
    const { seasonFrom, seasonTo } = values;
    if (seasonFrom > seasonTo)
      refuse('season-window-inside-out', { field: 'value', numbers: { seasonFrom, seasonTo } });
    await appendSetting(tx, scope, { key, value: typed, from, at: now });
    note({ verb: 'set', thing: 'setting', thingId: null, after: { key, value: typed, from } });
    return { key };
  },
});

function valueOf(key: SettingKey, text: string): string | number {
  const setting = settings[key];
  const typed = setting.kind === 'whole' ? (/^\d{1,9}$/.test(text) ? Number(text) : Number.NaN) : text;
  if (isAllowed(key, typed)) return typed;
  const numbers =
    setting.kind === 'whole'
      ? { least: setting.least, most: setting.most, unit: setting.unit }
      : { least: '01-01', most: '12-31', unit: '' };
  return refuse('setting-out-of-range', { field: 'value', numbers });
}
