'use server';

import { callerOf } from '@/app/_server/caller';
import { submitForm } from '@/app/_server/form-action';
import { withPicture } from '@/app/_server/picture-file';
import type { FormState } from '@/app/_ui/form-state';
import { changeBoardRules } from '@/lib/usecases/board/board-rules';
import { hidePost, leaveStanding, lockTalk, reportPost, showPost, unlockTalk } from '@/lib/usecases/board/keep-order';
import { confirmNotice, markRead } from '@/lib/usecases/board/mark-read';
import { addPicture } from '@/lib/usecases/board/pictures';
import { changeNotice, postNotice, startTalk } from '@/lib/usecases/board/start-thread';
import { editPost, reply, takeBackPost } from '@/lib/usecases/board/write-post';

type Given = { slug: string; form: FormData };

const inThread = (slug: string, threadId: string) => ({ redirectTo: `/${slug}/board/${threadId}` });
const atPost = (slug: string, { threadId, postId }: { threadId: string; postId: string }) => ({
  redirectTo: `/${slug}/board/${threadId}#post-${postId}`,
});

export async function startTalkAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(startTalk, { slug, form, done: ({ threadId }) => inThread(slug, threadId) });
}

export async function postNoticeAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(postNotice, { slug, form, done: ({ threadId }) => inThread(slug, threadId) });
}

export async function replyAction(slug: string, threadId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(reply, { slug, form, fixed: { threadId }, done: (made) => atPost(slug, made) });
}

export async function editPostAction(slug: string, postId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(editPost, { slug, form, fixed: { postId }, done: (made) => atPost(slug, made) });
}

export async function takeBackAction(slug: string, postId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(takeBackPost, { slug, form, fixed: { postId }, done: (made) => atPost(slug, made) });
}

export async function addPictureAction(slug: string, postId: string, _: FormState, form: FormData): Promise<FormState> {
  const { form: rest, file } = await withPicture(form);
  return submitForm(addPicture, { slug, form: rest, fixed: { postId, file }, done: (made) => atPost(slug, made) });
}

export async function reportAction(slug: string, postId: string, _: FormState, form: FormData): Promise<FormState> {
  const message = 'The committee is told. They see who told them; the author does not.';
  return submitForm(reportPost, { slug, form, fixed: { postId }, done: () => ({ message }) });
}

export async function hidePostAction(slug: string, postId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(hidePost, { slug, form, fixed: { postId }, done: (made) => atPost(slug, made) });
}

export async function showPostAction(slug: string, postId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(showPost, { slug, form, fixed: { postId }, done: (made) => atPost(slug, made) });
}

export async function leaveStandingAction(
  slug: string,
  postId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const done = () => ({ redirectTo: `/${slug}/board/reports` });
  return submitForm(leaveStanding, { slug, form, fixed: { postId }, done });
}

/** What is asked of a whole thread: one form each, back to the thread. */
async function ofThread(
  operation: typeof lockTalk | typeof unlockTalk | typeof confirmNotice | typeof changeNotice | typeof markRead,
  threadId: string,
  { slug, form }: Given,
): Promise<FormState> {
  return submitForm<{ threadId: string }>(operation, {
    slug,
    form,
    fixed: { threadId },
    done: () => inThread(slug, threadId),
  });
}

export async function lockAction(slug: string, threadId: string, _: FormState, form: FormData): Promise<FormState> {
  return ofThread(lockTalk, threadId, { slug, form });
}

export async function unlockAction(slug: string, threadId: string, _: FormState, form: FormData): Promise<FormState> {
  return ofThread(unlockTalk, threadId, { slug, form });
}

export async function confirmAction(slug: string, threadId: string, _: FormState, form: FormData): Promise<FormState> {
  return ofThread(confirmNotice, threadId, { slug, form });
}

export async function noticeAction(slug: string, threadId: string, _: FormState, form: FormData): Promise<FormState> {
  return ofThread(changeNotice, threadId, { slug, form });
}

export async function markReadAction(slug: string, threadId: string, _: FormState, form: FormData): Promise<FormState> {
  return ofThread(markRead, threadId, { slug, form });
}

/** The same, of itself, when a thread was shown. */
export async function noteRead(slug: string, threadId: string, writeId: string): Promise<void> {
  await markRead.run(await callerOf(slug), { writeId, threadId });
}

export async function rulesAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeBoardRules, { slug, form, done: () => ({ redirectTo: `/${slug}/board/rules` }) });
}
