/** Why something about money was not done. */
export type MoneyRefusal =
  | 'day-to-come'
  | 'account-unknown'
  | 'account-retired'
  | 'account-name-taken'
  | 'account-built-in'
  | 'account-not-empty'
  | 'same-account'
  | 'nobody-to-charge'
  | 'reversed-already'
  | 'is-correction'
  | 'entry-of-delivery'
  | 'price-unchanged'
  | 'nothing-left-over';
