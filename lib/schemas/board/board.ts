import { z } from 'zod';
import { topicTyped } from '@/lib/domain/board/topic';
import { optionalDay } from '../day';
import { line, note, ticked } from '../text';
import { form, rowId, writeId } from '../write';

const postWords = 'what you have to say';
const mostLetters = 5000;
const body = note(postWords, mostLetters);
const why = line('the reason', 200);

const topic = z
  .string({ error: 'Choose what it is about from the list.' })
  .max(100, 'Choose what it is about from the list.')
  .default('')
  .transform((typed, context) => {
    const found = typed === '' ? null : topicTyped(typed);
    if (typed !== '' && !found) context.addIssue('Choose what it is about from the list.');
    return found;
  });
const aboutDay = optionalDay('the day that it is about');

/** A talk that anybody begins. */
export const startTalkInput = form({ writeId, title: line('a title', 120), topic, aboutDay, body });
/** A notice of the committee. */
export const postNoticeInput = form({
  writeId,
  title: line('a title', 120),
  topic,
  aboutDay,
  body,
  pinned: ticked(),
  mustRead: ticked(),
  endsOn: optionalDay('the last day on which it stands'),
});
export const changeNoticeInput = form({
  writeId,
  threadId: rowId,
  pinned: ticked(),
  mustRead: ticked(),
  endsOn: optionalDay('the last day on which it stands'),
});
export const replyInput = form({ writeId, threadId: rowId, body });
export const editPostInput = form({ writeId, postId: rowId, body });
export const takeBackPostInput = form({
  writeId,
  postId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const threadInput = form({ writeId, threadId: rowId });
export const lockThreadInput = form({ writeId, threadId: rowId, why });
export const hidePostInput = form({ writeId, postId: rowId, why });
export const showPostInput = form({ writeId, postId: rowId });
export const reportPostInput = form({ writeId, postId: rowId, why });
export const leaveStandingInput = form({ writeId, postId: rowId });
export const boardRulesInput = form({ writeId, body: note('the rules', mostLetters) });
export const nameStaysInput = form({ writeId, nameStays: ticked() });

const fileWords = 'Choose a picture of up to 20 MB.';
const largestBytes = 20 * 1024 * 1024;
/** The file comes as its bytes; what it shows is said for whoever cannot see it. */
export const addPictureInput = form({
  writeId,
  postId: rowId,
  says: line('what the picture shows', 200),
  file: z
    .instanceof(Uint8Array, { error: fileWords })
    .refine((bytes) => bytes.length > 0 && bytes.length <= largestBytes, fileWords),
});
