import type { MembersRefusal } from '@/lib/usecases/refusals/members';
import type { Words } from './shape';

export const membersWords: Words<MembersRefusal> = {
  'sign-in-wrong': () => 'That address and password do not go together. Try again, or ask for a new password below.',
  'too-many-attempts': ({ minutes }) =>
    `Too many attempts. Wait ${minutes === 1 ? 'a minute' : `${minutes} minutes`}, then try again, or ask for a new password.`,
  'link-no-longer-good': () => 'This link has been used, has expired or was withdrawn. Ask for a new one.',
  'address-has-account': () =>
    'There is an account with this address. Give its password, and the two are joined; or use another address.',
  'member-already': () => 'This account is a member of the society already. Use another address.',
  'last-secretary': () => 'A society keeps at least one secretary. Hand the office over to somebody else first.',
  'successor-needs-account': ({ name }) =>
    `${name} has no account yet. Invite them first; once they have joined, hand over.`,
  'member-has-account': () => 'This member has joined already, so there is nothing to invite them to.',
  'member-has-left': () => 'This member has left the society.',
  'no-link-to-withdraw': () => 'There is no unused link to withdraw. You can make one with the button above.',
  'still-holds-plots': ({ plots }) => `Still the only holder of plot ${plots}. End that tenancy first.`,
  'leaves-before-start': ({ start }) => `They came, or took ground, on ${start}. Give that day or a later one.`,
  'password-wrong': () => 'That is not your present password.',
  'setting-no-such-choice': ({ names }) => `Give ${names}.`,
  'setting-out-of-range': ({ least, most, unit }) =>
    unit
      ? `Give a whole number from ${least} to ${most} ${unit}.`
      : `Give a day and a month, from ${least} to ${most}.`,
  'season-window-inside-out': ({ seasonFrom, seasonTo }) =>
    `The season’s window would run from ${seasonFrom} to ${seasonTo}. Give a day within one year that keeps its beginning before its end; to move both, move the further one first.`,
  'setting-in-the-past': () => 'A rule can hold from today or later, not from a day gone by.',
};
