import { dayWords } from '@/app/_ui/delivery-words';
import type { LetterFacts } from '@/lib/usecases/reminders/weekly-letter';
import { dueItem, lateFirst } from './due-item';
import { ruleParts } from './rule-line';

/** The weekly letter: the lines of “This week”, late ones first, and where to do each. */
export function weekLetter(facts: LetterFacts): { subject: string; body: string } {
  const { societyName, memberName, today, slug, due, rules, url, endsUrl } = facts;
  const origin = url.slice(0, url.lastIndexOf('/'));
  const items = due.map((one) => dueItem(one, { ...facts, society: slug }));
  const lines = lateFirst(items).map(({ when, what, action }) => `- ${when}: ${what}\n  ${origin}${action.href}`);
  const changed = rules
    .map(ruleParts)
    .map(({ name, before, after, since }) => `- ${name}: from ${before} to ${after}, ${since}.`);
  const parts = [
    `${memberName}, this is what wants doing at ${societyName} (${dayWords(today)}).`,
    lines.join('\n'),
    changed.length ? `The committee changed a rule:\n${changed.join('\n')}` : '',
    `All of it, with its reasons: ${url}`,
    `This letter comes on Mondays, when something wants doing. To end it, press once here: ${endsUrl}`,
  ];
  const count = items.length === 1 ? 'one thing' : `${items.length} things`;
  return {
    subject: `${societyName}: ${items.length ? `${count} this week` : 'a rule has changed'}`,
    body: `${parts.filter(Boolean).join('\n\n')}\n`,
  };
}
