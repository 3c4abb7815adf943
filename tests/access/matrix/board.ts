import { changeBoardRules, readBoardRules } from '@/lib/usecases/board/board-rules';
import {
  hidePost,
  leaveStanding,
  lockTalk,
  readReports,
  reportPost,
  showPost,
  unlockTalk,
} from '@/lib/usecases/board/keep-order';
import { confirmNotice, markRead } from '@/lib/usecases/board/mark-read';
import { chooseNameStays, readNameStays } from '@/lib/usecases/board/name-stays';
import { addPicture, readPicture } from '@/lib/usecases/board/pictures';
import { readBoard, readTopics, searchBoard } from '@/lib/usecases/board/read-board';
import { readPost, readThread } from '@/lib/usecases/board/read-thread';
import { changeNotice, postNotice, startTalk } from '@/lib/usecases/board/start-thread';
import { editPost, reply, takeBackPost } from '@/lib/usecases/board/write-post';
import { onePixel } from '../../fixtures/one-pixel';
import { once } from '../../fixtures/society';
import { committee, everybody, type Row } from '../row';

const words = { title: 't', body: 'b' };

export const board: readonly Row[] = [
  { operation: readBoard, input: () => ({}), allow: everybody },
  { operation: readTopics, input: () => ({}), allow: everybody },
  { operation: searchBoard, input: () => ({ words: 'words' }), allow: everybody },
  { operation: readThread, input: ({ threadId }) => ({ threadId }), allow: everybody },
  { operation: readPost, input: ({ postId }) => ({ postId }), allow: everybody },
  { operation: readPicture, input: ({ pictureId }) => ({ pictureId }), allow: everybody },
  { operation: readBoardRules, input: () => ({}), allow: everybody },
  { operation: readNameStays, input: () => ({}), allow: everybody },
  { operation: readReports, input: () => ({}), allow: committee },
  { operation: startTalk, input: () => once(words), allow: everybody },
  { operation: postNotice, input: () => once(words), allow: committee },
  { operation: changeNotice, input: ({ noticeId }) => once({ threadId: noticeId, pinned: 'on' }), allow: committee },
  { operation: reply, input: ({ threadId }) => once({ threadId, body: 'b' }), allow: everybody },
  // A post is its author's to change: this one is the secretary's.
  { operation: editPost, input: ({ ownPostId }) => once({ postId: ownPostId, body: 'b' }), allow: ['secretary'] },
  { operation: takeBackPost, input: ({ ownPostId }) => once({ postId: ownPostId, sure: 'yes' }), allow: ['secretary'] },
  {
    operation: addPicture,
    input: ({ ownPostId }) => once({ postId: ownPostId, says: 's', file: onePixel }),
    allow: ['secretary'],
  },
  // And this one the holder's, who has no need to report it.
  {
    operation: reportPost,
    input: ({ postId }) => once({ postId, why: 'w' }),
    allow: everybody.filter((who) => who !== 'holder'),
  },
  { operation: hidePost, input: ({ postId }) => once({ postId, why: 'w' }), allow: committee },
  { operation: showPost, input: ({ hiddenPostId }) => once({ postId: hiddenPostId }), allow: committee },
  { operation: leaveStanding, input: ({ reportedPostId }) => once({ postId: reportedPostId }), allow: committee },
  { operation: lockTalk, input: ({ threadId }) => once({ threadId, why: 'w' }), allow: committee },
  { operation: unlockTalk, input: ({ lockedThreadId }) => once({ threadId: lockedThreadId }), allow: committee },
  { operation: markRead, input: ({ threadId }) => once({ threadId }), allow: everybody },
  { operation: confirmNotice, input: ({ noticeId }) => once({ threadId: noticeId }), allow: everybody },
  { operation: changeBoardRules, input: () => once({ body: 'b' }), allow: committee },
  { operation: chooseNameStays, input: () => once({ nameStays: 'on' }), allow: everybody },
];
