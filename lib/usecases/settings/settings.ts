import 'server-only';
import { z } from 'zod';
import { deliveriesOf } from '@/lib/data/delivery';
import { appendSetting, settingHistory, settingsOn } from '@/lib/data/setting';
import { formatMonthDay, parseMonthDay } from '@/lib/domain/calendar/month-day';
import type { RuleChange } from '@/lib/domain/catalogue/rule-changes';
import type { Setting } from '@/lib/domain/catalogue/setting-row';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import {
  deliveryRules,
  isAllowed,
  settingInForce,
  settings,
  type SettingKey,
  type SettingValues,
} from '@/lib/domain/catalogue/settings';
import { isComing } from '@/lib/domain/delivery/steps';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { changeSettingInput } from '@/lib/schemas/settings/change-setting';
import { everyMemberId } from '../deliveries/recipients';
import { mutation, query, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { tell } from '../tell';

/** The society's rules: what holds today, and every value that was ever set. Everybody may read them. */
export const readSettings = query({
  name: 'read-settings',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today, now }) => ({
    today,
    keeping: (await deliveriesOf(db, scope, now)).flatMap((one) =>
      isComing(one.state) && canSeeDelivery(scope, one) ? [one.name] : [],
    ),
    values: await settingsOn(db, scope, today),
    history: await settingHistory(db, scope, 'rules'),
  }),
});

/** Set one of the society's rules from a day on. Deliveries that are planned keep theirs; every member is told. */
export const changeSetting = mutation({
  name: 'change-setting',
  allow: canRunSociety,
  input: changeSettingInput,
  write: async (context, { key, value, from }) => {
    const { tx, scope, today, now, note } = context;
    const typed = valueOf(key, value);
    if (from < today) refuse('setting-in-the-past', { field: 'from' });
    const values: SettingValues = { ...(await settingsOn(tx, scope, from)), [key]: typed };
    const { seasonFrom, seasonTo } = values;
    if (seasonFrom > seasonTo)
      refuse('season-window-inside-out', { field: 'value', numbers: { seasonFrom, seasonTo } });
    const before = settingInForce(await settingsOn(tx, scope, from), key);
    await appendSetting(tx, scope, { key, value: typed, from, at: now });
    note({ verb: 'set', thing: 'setting', thingId: null, after: { key, value: typed, from } });
    if (before !== typed) await announce(context, { key, before, after: typed, from });
    return { key };
  },
});

// A rule that everybody's need or share rests on is never changed behind their backs.
async function announce(context: WriteContext, { key, before, after, from }: RuleChange): Promise<void> {
  const { name } = settings[key];
  const change = `“${name}” is ${settingValueWords(key, after)} from ${from}; it was ${settingValueWords(key, before)}.`;
  const keeping = deliveryRules.includes(key)
    ? ' It counts from the next delivery that is planned from then on: those that are planned or open keep the rules they were planned with.'
    : '';
  await tell(
    context,
    await everyMemberId(context.tx, context.scope, context.today),
    'a rule of the society has changed',
    `The committee has changed a rule: ${change}${keeping} Sign in to see all the rules and what each was before.`,
  );
}

function valueOf(key: SettingKey, text: string): string | number {
  const setting = settings[key];
  const typed = typedAs(setting, text);
  if (isAllowed(key, typed)) return typed;
  const numbers =
    setting.kind === 'whole'
      ? { least: setting.least, most: setting.most, unit: setting.unit }
      : { least: boundOf(setting, 'earliest', '01-01'), most: boundOf(setting, 'latest', '12-31'), unit: '' };
  return refuse('setting-out-of-range', { field: 'value', numbers });
}

function typedAs({ kind }: Setting, text: string): string | number {
  if (kind === 'whole') return /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  return kind === 'month-day' ? (parseMonthDay(text) ?? text) : text;
}

function boundOf(setting: Setting, end: 'earliest' | 'latest', otherwise: string): string {
  return formatMonthDay((setting.kind === 'month-day' ? setting[end] : undefined) ?? otherwise);
}
