import { dayWords } from '@/app/_ui/delivery-words';
import type { LetterFacts } from '@/lib/usecases/reminders/weekly-letter';
import { dueItem, lateFirst } from './due-item';
import { ruleParts } from './rule-line';

/** The weekly letter: the lines of “This week”, late ones first, and where to do each. */
export function weekLetter(facts: LetterFacts): { subject: string; body: string } {
  const { societyName, memberName, today, slug, due, rules, begun, url, endsUrl } = facts;
  const origin = url.slice(0, url.lastIndexOf('/'));
  const items = due.map((one) => dueItem(one, { ...facts, society: slug }));
  const lines = lateFirst(items).map(({ when, what, action }) => `- ${when}: ${what}\n  ${origin}${action.href}`);
  const changed = rules
    .map(ruleParts)
    .map(({ name, before, after, since }) => `- ${name}: from ${before} to ${after}, ${since}.`);
  const talks = begun.map(
    ({ id, title, kind }) => `- ${kind === 'notice' ? 'notice' : 'talk'}: “${title}”\n  ${url}/board/${id}`,
  );
  const parts = [
    items.length
      ? `${memberName}, this is what wants doing at ${societyName} (${dayWords(today)}).`
      : `${memberName}, nothing wants doing at ${societyName} this week (${dayWords(today)}).`,
    lines.join('\n'),
    changed.length ? `The committee changed a rule:\n${changed.join('\n')}` : '',
    talks.length ? `New on the board:\n${talks.join('\n')}` : '',
    `All of it, with its reasons: ${url}`,
    `This letter comes on Mondays, when something wants doing or is new. To end it, press once here: ${endsUrl}`,
  ];
  return {
    subject: `${societyName}: ${headOf(items.length, rules.length)}`,
    body: `${parts.filter(Boolean).join('\n\n')}\n`,
  };
}

function headOf(things: number, rules: number): string {
  if (things) return `${things === 1 ? 'one thing' : `${things} things`} this week`;
  return rules ? 'a rule has changed' : 'new on the board';
}
