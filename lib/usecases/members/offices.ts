import 'server-only';
import { lockSecretaries, memberById, setRoles } from '@/lib/data/member';
import { canRunSociety, type Role } from '@/lib/domain/policy/standing';
import { handOverInput, setRolesInput } from '@/lib/schemas/members/member';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';

const offices: readonly Role[] = ['secretary', 'treasurer', 'chair', 'gate_helper'];

/** Say which offices a member holds. */
export const setMemberRoles = mutation({
  name: 'set-member-roles',
  allow: canRunSociety,
  input: setRolesInput,
  write: async ({ tx, scope, today, note }, input) => {
    const secretaries = await lockSecretaries(tx, scope);
    const member = await memberById(tx, scope, input.memberId, today);
    if (!member?.isHere) throw new NotFound();
    const roles = offices.filter((office) => input[office as keyof typeof input]);
    if (!roles.includes('secretary') && secretaries.every((id) => id === member.id))
      refuse('last-secretary', { field: 'secretary' });
    if (roles.includes('secretary') && !member.hasAccount)
      refuse('successor-needs-account', { field: 'secretary', numbers: { name: member.name } });
    await setRoles(tx, scope, member.id, roles);
    note({
      verb: 'offices set',
      thing: 'member',
      thingId: member.id,
      forMemberId: member.id,
      before: { roles: [...member.roles] },
      after: { roles },
    });
    return { memberId: member.id };
  },
});

/** Hand the secretary's office to a successor, and lay it down or keep it beside them. */
export const handOver = mutation({
  name: 'hand-over',
  allow: canRunSociety,
  input: handOverInput,
  write: async ({ tx, scope, today, note }, { memberId, keep }) => {
    await lockSecretaries(tx, scope);
    const successor = await memberById(tx, scope, memberId, today);
    const present = await memberById(tx, scope, scope.memberId, today);
    if (!successor || !present || !successor.isHere || successor.id === scope.memberId) throw new NotFound();
    if (!successor.hasAccount)
      refuse('successor-needs-account', { field: 'memberId', numbers: { name: successor.name } });
    await setRoles(tx, scope, successor.id, [...new Set<Role>([...successor.roles, 'secretary'])]);
    if (!keep)
      await setRoles(
        tx,
        scope,
        present.id,
        present.roles.filter((role) => role !== 'secretary'),
      );
    note({
      verb: 'handed over',
      thing: 'secretary',
      thingId: successor.id,
      forMemberId: successor.id,
      after: { keep },
    });
    return { keep };
  },
});
