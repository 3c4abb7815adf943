/** Why something about the board was not done. */
export type BoardRefusal =
  | 'topic-gone'
  | 'one-topic'
  | 'notice-ends-before'
  | 'thread-locked'
  | 'locked-already'
  | 'not-locked'
  | 'post-hidden'
  | 'post-taken-back'
  | 'not-hidden'
  | 'reported-already'
  | 'nothing-reported'
  | 'picture-unreadable'
  | 'pictures-enough';
