import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords, whenWords } from '@/app/_ui/delivery-words';
import { DueList } from '@/app/_ui/due-list';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readWeek } from '@/lib/usecases/week/read-week';
import { dueItem, lateFirst } from './_parts/due-item';
import { ruleParts } from './_parts/rule-line';

export const metadata: Metadata = { title: 'This week' };

export default async function WeekPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { due, rules, lately, today, timeZone, units, holds } = await ask(readWeek, society);
  const items = lateFirst(due.map((one) => dueItem(one, { society, today, timeZone, units })));
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
            {rules.map((rule) => {
              const { name, before, after, since } = ruleParts(rule);
              return (
                <li key={`${rule.key} ${rule.from}`}>
                  {name}: from {before} to <strong>{after}</strong>, {since}.
                </li>
              );
            })}
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
