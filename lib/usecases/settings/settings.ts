import 'server-only';
import { z } from 'zod';
import { deliveriesOf } from '@/lib/data/delivery';
import { appendSetting, settingHistory, settingsOn } from '@/lib/data/setting';
import { settingInForce } from '@/lib/domain/catalogue/settings';
import { isComing } from '@/lib/domain/delivery/steps';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { dayIn } from '@/lib/platform/clock';
import { changeSettingInput } from '@/lib/schemas/settings/change-setting';
import { closeDue } from '../ballots/close-ballot';
import { mutation, query, type ReadContext } from '../operation';
import { refuse } from '../refusal';
import { tellRule } from './tell-rule';
import { typedSetting, windowWith } from './typed-setting';

/** The society's rules: what holds today, and every value that was ever set. Everybody may read them. */
export const readSettings = query({
  name: 'read-settings',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    await closeDue(context);
    return rulesOf(context);
  },
});

async function rulesOf({ db, scope, today, now }: ReadContext) {
  const history = await settingHistory(db, scope, 'rules');
  return {
    today,
    keeping: (await deliveriesOf(db, scope, now)).flatMap((one) =>
      isComing(one.state) && canSeeDelivery(scope, one) ? [one.name] : [],
    ),
    values: await settingsOn(db, scope, today),
    history: history.map(({ ballot, ...one }) => ({
      ...one,
      carried: ballot && { ballotId: ballot.id, number: ballot.number, on: dayIn(scope.timeZone, ballot.closedAt) },
    })),
  };
}

/** Set one of the society's rules from a day on. Deliveries that are planned keep theirs; every member is told. */
export const changeSetting = mutation({
  name: 'change-setting',
  allow: canRunSociety,
  input: changeSettingInput,
  write: async (context, { key, value, from }) => {
    const { tx, scope, today, now, note } = context;
    const typed = typedSetting(key, value, 'value');
    if (from < today) refuse('setting-in-the-past', { field: 'from' });
    const values = await settingsOn(tx, scope, from);
    const window = windowWith(values, key, typed);
    if (!window.isOpen) refuse('season-window-inside-out', { field: 'value', numbers: window.numbers });
    const before = settingInForce(values, key);
    await appendSetting(tx, scope, { key, value: typed, from, at: now });
    note({ verb: 'set', thing: 'setting', thingId: null, after: { key, value: typed, from } });
    if (before !== typed) await tellRule(context, { key, before, after: typed, from }, 'The committee');
    return { key };
  },
});
