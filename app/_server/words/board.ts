import type { BoardRefusal } from '@/lib/usecases/refusals/board';
import type { Words } from './shape';

export const boardWords: Words<BoardRefusal> = {
  'topic-gone': () => 'That is not there to be written about. Choose from the list, or leave it at the site at large.',
  'one-topic': () => 'A thread is about one thing. Leave the day empty, or leave the list at the site at large.',
  'notice-ends-before': () => 'That day has passed. Give today or a later one, or leave it empty.',
  'thread-locked': () => 'The committee has locked this thread, so nobody writes in it any more. Nothing was posted.',
  'locked-already': () => 'It is locked already.',
  'not-locked': () => 'It is not locked.',
  'post-hidden': () =>
    'The committee has hidden this post, so it can no longer be changed. Ask them if you think that it should stand.',
  'post-taken-back': () => 'Its author has taken this post back already.',
  'not-hidden': () => 'It is not hidden.',
  'reported-already': () => 'You have told the committee of this post already; they have not looked yet.',
  'nothing-reported': () => 'Nobody waits for an answer about this post any more.',
  'picture-unreadable': () => 'That is no picture that can be read. Send a JPEG, PNG or WebP of up to 20 MB.',
  'pictures-enough': ({ most }) => `A post has room for ${most} pictures. Put the next one into another post.`,
};
