/** Why something about members was not done. */
export type MembersRefusal = 'not-yet';
