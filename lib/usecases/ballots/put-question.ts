import 'server-only';
import type { z } from 'zod';
import { createBallot, lockBallot, type ProposedSetting, type Question, rewriteBallot } from '@/lib/data/ballot';
import { settingsOn } from '@/lib/data/setting';
import { canPutToHands } from '@/lib/domain/policy/ballot';
import { dayIn } from '@/lib/platform/clock';
import { changeQuestionInput, draftQuestionInput } from '@/lib/schemas/ballots/ballot';
import { closingAt } from '../closing-at';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { typedSetting, windowWith } from '../settings/typed-setting';
import { choicesTyped } from './choices-typed';

type Typed = Omit<z.output<typeof draftQuestionInput>, 'writeId'>;

/** Write down a question that is to be put to a count of hands. Until it is opened the committee alone sees and changes it. */
export const draftQuestion = mutation({
  name: 'draft-question',
  allow: canPutToHands,
  input: draftQuestionInput,
  write: async (context, { writeId: _, ...typed }) => {
    const { tx, scope, now, note } = context;
    const question = await questionTyped(context, typed);
    const ballotId = await createBallot(tx, scope, question, now);
    note({ verb: 'drafted', thing: 'count of hands', thingId: ballotId, after: factsOf(question) });
    return { ballotId };
  },
});

/** Change a question before it is opened. */
export const changeQuestion = mutation({
  name: 'change-question',
  allow: canPutToHands,
  input: changeQuestionInput,
  write: async (context, { writeId: _, ballotId, ...typed }) => {
    const { tx, scope, note } = context;
    const before = await lockBallot(tx, scope, ballotId, 'alone');
    if (!before) throw new NotFound();
    if (before.state !== 'draft') refuse('question-stands');
    const question = await questionTyped(context, typed);
    await rewriteBallot(tx, scope, ballotId, question);
    note({
      verb: 'changed',
      thing: 'count of hands',
      thingId: ballotId,
      before: factsOf(before),
      after: factsOf(question),
    });
    return { ballotId };
  },
});

function factsOf({
  kind,
  handsBy,
  quorum,
  carriedBy,
  closesAt,
  setting,
  choices,
}: Omit<Question, 'choices'> & {
  readonly choices: readonly unknown[];
}) {
  return {
    ...{ kind, handsBy, carriedBy, quorum: quorum.amount, quorumKind: quorum.kind },
    ...{ closesAt: closesAt.toISOString(), choices: choices.length, setting: setting && { ...setting } },
  };
}

async function questionTyped(context: WriteContext, typed: Typed): Promise<Question> {
  const { scope, now } = context;
  const { title, body, kind, handsBy, carriedBy, quorumKind, quorum: amount } = typed;
  if (quorumKind === 'percent' && amount > 100) refuse('quorum-over-hundred', { field: 'quorum' });
  const choices = choicesTyped(kind, typed.choices);
  const closesAt = closingAt(scope.timeZone, typed.closesAt);
  if (closesAt <= now) refuse('count-closes-in-the-past', { field: 'closesAt' });
  const setting = await settingTyped(context, typed, closesAt);
  return { title, body, kind, handsBy, carriedBy, quorum: { kind: quorumKind, amount }, closesAt, choices, setting };
}

// Checked when it is put, and once more when it is carried: in between the rules may have moved.
async function settingTyped(
  { tx, scope }: WriteContext,
  { kind, settingKey: key, settingValue, settingFrom }: Typed,
  closesAt: Date,
): Promise<ProposedSetting | null> {
  if (!key) return null;
  if (kind !== 'motion') refuse('rule-by-motion-only', { field: 'settingKey' });
  const value = typedSetting(key, settingValue, 'settingValue');
  const closingDay = dayIn(scope.timeZone, closesAt);
  const from = settingFrom ?? closingDay;
  if (from < closingDay) refuse('rule-before-closing', { field: 'settingFrom', numbers: { closingDay } });
  const window = windowWith(await settingsOn(tx, scope, from), key, value);
  if (!window.isOpen) refuse('season-window-inside-out', { field: 'settingValue', numbers: window.numbers });
  return { key, value, from };
}
