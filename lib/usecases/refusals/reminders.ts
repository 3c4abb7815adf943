/** Why something about reminders was not done. */
export type RemindersRefusal = 'no-calendar' | 'no-address-for-mail';
