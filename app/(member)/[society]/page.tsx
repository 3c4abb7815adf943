import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords, loadsWords, whenWords } from '@/app/_ui/delivery-words';
import { DueList, type DueItem } from '@/app/_ui/due-list';
import { NeedReason } from '@/app/_ui/need-reason';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { daysBetween } from '@/lib/domain/calendar/calendar-date';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import { deliveryRules, settings } from '@/lib/domain/catalogue/settings';
import { readWeek, type Due } from '@/lib/usecases/ground/read-week';
import { residueItem } from './_parts/residue-due';
import { seedItem } from './_parts/seed-due';
import { sheetItem } from './_parts/sheet-due';

export const metadata: Metadata = { title: 'This week' };

export default async function WeekPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { due, rules, lately, today, timeZone, units, holds } = await ask(readWeek, society);
  const items = due.map((one) => toItem(one, society, today, timeZone, units));
  const counted = [
    'Nothing wants',
    'One thing wants',
    'Two things want',
    'Three things want',
    'Four things want',
    'Five things want',
  ];
  return (
    <>
      <PageHead title={`${counted[items.length] ?? `${items.length} things want`} doing`} lead={dayWords(today)} />
      <div className="wide">
        {items.length ? (
          <DueList items={items} />
        ) : (
          <Empty>
            {holds
              ? 'Your ground is in order. Enjoy the quiet.'
              : 'You hold no plot at present, so there is nothing to do here.'}
          </Empty>
        )}
      </div>
      {rules.length ? (
        <Sheet title="The committee changed a rule" wide>
          <ul>
            {rules.map(({ key, before, after, from }) => (
              <li key={`${key} ${from}`}>
                {settings[key].name}: from {settingValueWords(key, before)} to{' '}
                <strong>{settingValueWords(key, after)}</strong>, from {dayWords(from)}
                {deliveryRules.includes(key) ? ', for deliveries planned from then on' : ''}.
              </li>
            ))}
          </ul>
          <p className="small">
            <Link href={`/${society}/office/settings`}>All the rules</Link>
          </p>
        </Sheet>
      ) : null}
      {lately.length ? (
        <Sheet title="Lately on your ground" wide>
          <ul>
            {lately.map(({ id, at, by, verb, what, season, bed }) => (
              <li key={id}>
                {by} {verb} {what}
                {bed ? `, bed ${bed}` : ''}
                {season ? `, ${season}` : ''} <span className="soft small">{whenWords(at, timeZone)}</span>
              </li>
            ))}
          </ul>
        </Sheet>
      ) : null}
    </>
  );
}

function toItem(
  due: Due,
  society: string,
  today: Parameters<typeof daysBetween>[0],
  timeZone: string,
  units: 'metric' | 'imperial',
): DueItem {
  const at = `/${society}`;
  if (due.code === 'book')
    return {
      key: `book ${due.deliveryId} ${due.holdingId}`,
      when: whenWords(due.closesAt, timeZone).split(' at ')[0] ?? '',
      what:
        due.asked === null
          ? `Say how much you want of “${due.name}”`
          : `You ask for ${loadsWords(due.asked, due.need.loadUnit)} of “${due.name}”`,
      why: (
        <>
          Your ground needs {loadsWords(due.need.loads, due.need.loadUnit)}; booking closes{' '}
          {whenWords(due.closesAt, timeZone)}.
          <Reason ask={`Why ${due.need.loads}?`}>
            <NeedReason need={due.need} units={units} />
          </Reason>
        </>
      ),
      action: {
        href: `${at}/deliveries/${due.deliveryId}`,
        label:
          due.asked === null
            ? due.need.loads
              ? `Book ${loadsWords(due.need.loads, due.need.loadUnit)}`
              : 'Book'
            : 'Change it',
      },
    };
  if (due.code === 'collect') {
    const left = daysBetween(today, due.by);
    return {
      key: `collect ${due.deliveryId}`,
      when: left < 0 ? `${-left} days late` : `by ${dayWords(due.by).slice(0, -5)}`,
      late: left < 0,
      what: `Collect ${loadsWords(due.loads, due.loadUnit)} of “${due.name}”`,
      why: `${due.share} is your share.`,
      action: { href: `${at}/deliveries/${due.deliveryId}/collect`, label: 'At the heap' },
    };
  }
  if (due.code === 'draw-beds')
    return {
      key: `draw ${due.plotId}`,
      when: 'when you can',
      what: `Draw the beds of plot ${due.plotNumber}`,
      why: 'Then its rotation, turns and needs are your own, and not assumed.',
      action: { href: `${at}/ground/plots/${due.plotId}/beds`, label: 'Draw beds' },
    };
  if (due.code === 'record')
    return {
      key: `record ${due.plotId} ${due.season}`,
      when: due.isNext ? 'this autumn' : 'overdue',
      late: !due.isNext,
      what: `${due.isNext ? 'Plan' : 'Record'} ${due.season} for ${due.beds.length === 1 ? 'bed' : 'beds'} ${due.beds.join(', ')}`,
      why: `Plot ${due.plotNumber}. ${due.isNext ? 'Each break is judged as you plan.' : 'What is not recorded stays “not known”.'}`,
      action: { href: `${at}/ground/plots/${due.plotId}/seasons`, label: `Fill in ${due.season}` },
    };
  if (due.code === 'dig') return sheetItem(due, society);
  if (due.code === 'list-seed' || due.code === 'fetch-seed' || due.code === 'run-seed')
    return seedItem(due, society, timeZone);
  if (due.code !== 'run') return residueItem(due, society, today, timeZone);
  return {
    key: `run ${due.deliveryId}`,
    when: 'secretary',
    what: `“${due.name}”: ${due.step}`,
    action: { href: `${at}/office/deliveries/${due.deliveryId}`, label: 'Run it' },
  };
}
