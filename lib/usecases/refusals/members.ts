/** Why something about members and signing in was not done. */
export type MembersRefusal =
  | 'sign-in-wrong'
  | 'too-many-attempts'
  | 'link-no-longer-good'
  | 'address-has-account'
  | 'member-already'
  | 'last-secretary'
  | 'successor-needs-account'
  | 'member-has-account'
  | 'member-has-left'
  | 'no-link-to-withdraw'
  | 'still-holds-plots'
  | 'leaves-before-start'
  | 'password-wrong'
  | 'setting-out-of-range'
  | 'setting-no-such-choice'
  | 'setting-in-the-past'
  | 'season-window-inside-out';
