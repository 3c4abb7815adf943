/** Why something about a count of hands was not done. */
export type BallotsRefusal =
  | 'question-stands'
  | 'quorum-over-hundred'
  | 'quorum-beyond-roll'
  | 'nobody-entitled'
  | 'choices-two-to-eight'
  | 'choice-too-long'
  | 'choices-alike'
  | 'count-closes-in-the-past'
  | 'rule-by-motion-only'
  | 'rule-before-closing'
  | 'not-open-yet'
  | 'count-is-closed'
  | 'withdrawn-already'
  | 'not-on-the-roll';
