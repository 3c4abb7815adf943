import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import {
  deliveryRules,
  isSettingKey,
  settingInForce,
  type SettingKey,
  settingParts,
  settings,
} from '@/lib/domain/catalogue/settings';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import { citation, standingOf } from '@/lib/domain/catalogue/sources';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { readSettings } from '@/lib/usecases/settings/settings';
import { changeSettingAction } from './actions';

export const metadata: Metadata = { title: 'The society’s rules' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ rule?: string }> };

export default async function SettingsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { rule = '' } = await searchParams;
  const [{ values, history, keeping, today }, { roles }] = await Promise.all([
    ask(readSettings, society),
    ask(readStanding, society),
  ]);
  const present = (key: SettingKey) => settingInForce(values, key);
  const chosen = isSettingKey(rule) ? rule : null;
  const runs = roles.includes('secretary');
  return (
    <>
      <PageHead
        title="The society’s rules"
        lead="What the figures rest on. Each comes with a default and its source; the society may set its own, from a day on."
      />
      {chosen && runs ? (
        <section id="change">
          <Sheet title={`Change: ${settings[chosen].name}`}>
            <Form action={changeSettingAction.bind(null, society)} writeId={randomUUID()} submit="Set it">
              <input type="hidden" name="key" value={chosen} />
              <ValueField settingKey={chosen} value={String(present(chosen))} />
              <TextField name="from" type="date" label="From" value={today} />
              <p className="small">
                {deliveryRules.includes(chosen)
                  ? keeping.length
                    ? `It counts from the next delivery that is planned. These keep the rules they were planned with: ${keeping.map((name) => `“${name}”`).join(', ')}. `
                    : 'It counts from the next delivery that is planned. '
                  : ''}
                Every member who can be mailed is told, and it stands on everybody’s page of the week for four weeks.
              </p>
            </Form>
          </Sheet>
        </section>
      ) : null}
      {settingParts.map((part) => (
        <Sheet key={part.name} title={part.name} flush wide>
          <Table
            caption={`Rules in force: ${part.name.toLowerCase()}`}
            columns={[
              { head: 'rule' },
              { head: 'value', number: true },
              { head: 'default', number: true },
              { head: 'source of the default' },
              { head: '' },
            ]}
            rows={part.keys.map((key) => {
              const { name, says, source, value } = settings[key];
              return {
                key,
                mine: String(present(key)) !== String(value),
                cells: [
                  <div key="name">
                    {name}
                    <div className="small soft">
                      {says}
                      {deliveryRules.includes(key) ? ' A change counts from the next delivery planned on.' : ''}
                    </div>
                  </div>,
                  settingValueWords(key, present(key)),
                  settingValueWords(key, value),
                  standingOf(source) === 'published' ? citation(source) : standingOf(source),
                  runs ? (
                    <Link key="change" href={`?rule=${key}#change`}>
                      change
                    </Link>
                  ) : (
                    ''
                  ),
                ],
              };
            })}
          />
        </Sheet>
      ))}
      <Sheet title="What was set before">
        {history.length === 0 ? <p className="soft">Nothing yet: every rule stands at its default.</p> : null}
        <ul>
          {history.map(({ key, value, from, by, setAt, carried }) => (
            <li key={`${key}-${setAt.toISOString()}`}>
              {isSettingKey(key) ? settings[key].name : key}:{' '}
              {isSettingKey(key) && value !== null ? settingValueWords(key, value) : value} from {from},{' '}
              {carried ? (
                <Link href={`/${society}/board/decisions/${carried.ballotId}`}>
                  carried by a count of hands on {dayWords(carried.on)}
                </Link>
              ) : (
                `set by ${by}`
              )}
            </li>
          ))}
        </ul>
      </Sheet>
    </>
  );
}

function ValueField({ settingKey, value }: { settingKey: SettingKey; value: string }) {
  const setting = settings[settingKey];
  if (setting.kind === 'choice')
    return (
      <SelectField
        name="value"
        label="Value"
        value={value}
        choices={setting.choices.map(({ key, name }) => ({ value: key, label: name }))}
      />
    );
  const hint =
    setting.kind === 'whole' ? `${setting.least} to ${setting.most} ${setting.unit}` : 'Day and month, such as 1 May';
  return (
    <TextField
      name="value"
      label="Value"
      value={setting.kind === 'month-day' ? formatMonthDay(value) : value}
      hint={hint}
      inputMode={setting.kind === 'whole' ? 'numeric' : 'text'}
      className="short-field"
    />
  );
}
