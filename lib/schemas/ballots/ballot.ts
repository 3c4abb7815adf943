import { z } from 'zod';
import { isSettingKey } from '@/lib/domain/catalogue/settings';
import { optionalDay } from '../day';
import { line, note, optionalNote, wholeNumber } from '../text';
import { wallTime } from '../wall-time';
import { form, optionalRowId, rowId, writeId } from '../write';

const ruleWords = 'Choose a rule from the list, or none.';

const question = {
  title: line('the question', 160),
  body: note('what there is to say for it', 5000),
  kind: z.enum(['motion', 'choice'], 'Choose for or against, or a choice between several.'),
  choices: optionalNote('the choices', 1200),
  handsBy: z.enum(['member', 'holding'], 'Choose one hand for each member, or for each holding.'),
  quorum: wholeNumber('the quorum', 0, 9999),
  quorumKind: z.enum(['number', 'percent'], 'Choose hands, or percent of those entitled.'),
  carriedBy: z.enum(['more', 'two-thirds'], 'Choose more for than against, or two thirds.'),
  closesAt: wallTime,
  settingKey: z
    .string({ error: ruleWords })
    .default('')
    .refine((key) => key === '' || isSettingKey(key), ruleWords)
    .transform((key) => (isSettingKey(key) ? key : null)),
  settingValue: z.string({ error: 'Give one value.' }).trim().max(40, 'That is too long for a value.').default(''),
  settingFrom: optionalDay('the day from which it would hold'),
};

export const draftQuestionInput = form({ writeId, ...question });
export const changeQuestionInput = form({ writeId, ballotId: rowId, ...question });
export const openBallotInput = form({
  writeId,
  ballotId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const withdrawBallotInput = form({ writeId, ballotId: rowId, why: line('the reason', 200) });
export const raiseHandInput = form({ writeId, ballotId: rowId, holdingId: optionalRowId, choiceId: rowId });
/** On the roll a member stands for themselves or for a holding: both in one field, as the list has them. */
export const enterHandInput = form({ writeId, ballotId: rowId, rollId: rowId, choiceId: rowId });
