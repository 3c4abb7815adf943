import 'server-only';
import {
  changeMember as writeMember,
  createMembers,
  eraseMember as writeErased,
  lockSecretaries,
  memberById,
  memberLeaves as writeLeaving,
  newestStart,
} from '@/lib/data/member';
import { holdingsOfMember } from '@/lib/data/holding';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import {
  addMemberInput,
  changeMemberInput,
  changeOwnDetailsInput,
  eraseMemberInput,
  memberLeavesInput,
} from '@/lib/schemas/members/member';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';
import { invite, linkOf } from './invite-member';

/** Add a person to the society, with or without an account to come. */
export const addMember = mutation({
  name: 'add-member',
  allow: canRunSociety,
  input: addMemberInput,
  write: async (context, { name, email, phone, postal, invite: wanted }) => {
    const { tx, scope, today, note } = context;
    const [id = ''] = await createMembers(tx, scope, [{ name, email, phone }], today);
    if (postal) await writeMember(tx, scope, id, { postal });
    note({ verb: 'added', thing: 'member', thingId: id, forMemberId: id });
    return { memberId: id, invitationId: wanted ? await invite(context, { id, name, email }) : null };
  },
  show: ({ memberId, invitationId }) => ({ memberId, link: invitationId && linkOf(invitationId) }),
});

/** Change a member's name or how they are reached. The book notes which, never what. */
export const changeMember = mutation({
  name: 'change-member',
  allow: canRunSociety,
  input: changeMemberInput,
  write: async ({ tx, scope, today, note }, { memberId, writeId: _, ...contact }) => {
    const before = await memberById(tx, scope, memberId, today);
    if (!before || before.isErased) throw new NotFound();
    await writeMember(tx, scope, memberId, contact);
    const changed = (['name', 'email', 'phone', 'postal'] as const).filter((key) => before[key] !== contact[key]);
    note({ verb: 'changed', thing: 'member', thingId: memberId, forMemberId: memberId, after: { changed } });
    return { memberId };
  },
});

/** Change one's own name, contact and units. */
export const changeOwnDetails = mutation({
  name: 'change-own-details',
  allow: canEnter,
  input: changeOwnDetailsInput,
  write: async ({ tx, scope, note }, { writeId: _, ...details }) => {
    await writeMember(tx, scope, scope.memberId, details);
    note({ verb: 'changed', thing: 'member', thingId: scope.memberId, after: { units: details.units } });
    return {};
  },
});

/** A member leaves the society, today or on a day to come. Ground that only they hold must be given up first. */
export const memberLeaves = mutation({
  name: 'member-leaves',
  allow: canRunSociety,
  input: memberLeavesInput,
  write: async ({ tx, scope, today, note }, { memberId, on }) => {
    const member = await memberById(tx, scope, memberId, today);
    if (!member || member.leftOn) throw new NotFound();
    const start = await newestStart(tx, scope, memberId);
    if (start && on < start) refuse('leaves-before-start', { field: 'on', numbers: { start } });
    const alone = (await holdingsOfMember(tx, scope, memberId, on)).filter(
      ({ memberIds, plots }) => memberIds.length === 1 && plots.length,
    );
    if (alone.length)
      refuse('still-holds-plots', {
        numbers: { plots: alone.flatMap(({ plots }) => plots.map(({ number }) => number)).join(', ') },
      });
    const secretaries = await lockSecretaries(tx, scope);
    if (secretaries.includes(memberId) && secretaries.length === 1) refuse('last-secretary');
    await writeLeaving(tx, scope, memberId, on);
    note({
      verb: 'left',
      thing: 'member',
      thingId: memberId,
      forMemberId: memberId,
      before: { roles: [...member.roles] },
      after: { on },
    });
    return { memberId };
  },
});

/** Erase a former member's name and contact details. The ground's history and the book, which hold ids only, stay. */
export const eraseMember = mutation({
  name: 'erase-member',
  allow: canRunSociety,
  input: eraseMemberInput,
  write: async ({ tx, scope, today, now, note }, { memberId }) => {
    const member = await memberById(tx, scope, memberId, today);
    if (!member || member.isHere || member.isErased) throw new NotFound();
    await writeErased(tx, scope, memberId, now);
    note({ verb: 'erased', thing: 'member', thingId: memberId, forMemberId: memberId });
    return { memberId };
  },
});
