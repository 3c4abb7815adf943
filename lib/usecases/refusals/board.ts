/** Why something about the board was not done. */
export type BoardRefusal =
  | 'topic-gone'
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
