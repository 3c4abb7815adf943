import type { BallotsRefusal } from '@/lib/usecases/refusals/ballots';
import type { Words } from './shape';

export const ballotsWords: Words<BallotsRefusal> = {
  'question-stands': () =>
    'It was opened or withdrawn already, so the question stands as it was put. Withdraw it and put another.',
  'quorum-over-hundred': () => 'Give at most 100 percent, or say how many hands.',
  'quorum-beyond-roll': ({ needed, entitled }) =>
    `The quorum asks for ${needed} hands, and only ${entitled} could be raised today. Change the question first.`,
  'nobody-entitled': () => 'Nobody holds ground today, so no hand could be raised. Let each member raise one.',
  'choices-two-to-eight': () => 'Give two to eight choices, one on a line. To abstain is always offered beside them.',
  'choice-too-long': ({ longest }) => `Keep each choice to ${longest} characters.`,
  'choices-alike': () => 'Two of the choices say the same, or one says “Abstain”, which is always offered. Change one.',
  'count-closes-in-the-past': () => 'The closing time has passed already. Give one that is still to come.',
  'rule-by-motion-only': () => 'Only a motion, for or against, can change a rule. Put it as one, or choose no rule.',
  'rule-before-closing': ({ closingDay }) =>
    `The rule cannot hold before it is carried. Give ${closingDay}, when the count closes, or a later day.`,
  'not-open-yet': () => 'Hands are raised once the question is opened.',
  'count-is-closed': () => 'The count is closed, and its result stands.',
  'withdrawn-already': () => 'The committee has withdrawn this question. No hand counts for it.',
  'not-on-the-roll': () =>
    'There is no hand to raise here: the roll of the day on which the question was opened decides who has one.',
};
