import { changeBoardRules } from '@/lib/usecases/board/board-rules';
import { hidePost, lockTalk, reportPost } from '@/lib/usecases/board/keep-order';
import { addPicture } from '@/lib/usecases/board/pictures';
import { postNotice, startTalk } from '@/lib/usecases/board/start-thread';
import { editPost, reply, takeBackPost } from '@/lib/usecases/board/write-post';
import { db } from '@/lib/data/db';
import { done, once } from '../../fixtures/society';
import { picture } from '../../fixtures/picture';
import type { Ids } from '../row';
import type { Members, Word } from './members';

type BoardIds = Pick<
  Ids,
  'threadId' | 'noticeId' | 'lockedThreadId' | 'postId' | 'ownPostId' | 'reportedPostId' | 'hiddenPostId' | 'pictureId'
>;

/** A talk with a post of everybody's kind, a notice that must be read, and a thread that is locked. */
export async function makeBoard(word: Word, { secretary, holder, neighbour }: Members): Promise<BoardIds> {
  const talk = { title: word('talk title'), topic: 'crop:onion', body: word('post words') };
  const { threadId } = await done(startTalk.run(holder.caller, once(talk)));
  const write = async (caller: typeof holder.caller, what: string) =>
    (await done(reply.run(caller, once({ threadId, body: word(what) })))).postId;
  const postId = await write(holder.caller, 'words before an edit');
  await done(editPost.run(holder.caller, once({ postId, body: word('post words, edited') })));
  const ownPostId = await write(secretary.caller, 'own words');
  const says = word('picture says');
  await done(addPicture.run(secretary.caller, once({ postId: ownPostId, says, file: await picture() })));
  const reportedPostId = await write(holder.caller, 'reported words');
  await done(reportPost.run(neighbour.caller, once({ postId: reportedPostId, why: word('reported because') })));
  const hiddenPostId = await write(neighbour.caller, 'hidden words');
  await done(hidePost.run(secretary.caller, once({ postId: hiddenPostId, why: word('hidden because') })));
  const takenBack = await write(holder.caller, 'words taken back');
  await done(takeBackPost.run(holder.caller, once({ postId: takenBack, sure: 'yes' })));
  const notice = { title: word('notice'), body: word('notice words'), mustRead: 'on', pinned: 'on' };
  const { threadId: noticeId } = await done(postNotice.run(secretary.caller, once(notice)));
  const other = { title: word('locked'), body: word('locked words') };
  const { threadId: lockedThreadId } = await done(startTalk.run(secretary.caller, once(other)));
  await done(lockTalk.run(secretary.caller, once({ threadId: lockedThreadId, why: word('locked because') })));
  await done(changeBoardRules.run(secretary.caller, once({ body: word('board rules') })));
  const { id: pictureId } = await db().postPicture.findFirstOrThrow({ where: { postId: ownPostId } });
  return { threadId, noticeId, lockedThreadId, postId, ownPostId, reportedPostId, hiddenPostId, pictureId };
}
