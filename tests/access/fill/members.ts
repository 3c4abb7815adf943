import { db } from '@/lib/data/db';
import { toDbDay } from '@/lib/data/day';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { inviteMember } from '@/lib/usecases/members/invite-member';
import { changeOwnDetails } from '@/lib/usecases/members/keep-members';
import { done, makeMember, type makeSociety, once } from '../../fixtures/society';

export type Made = Awaited<ReturnType<typeof makeSociety>>;
export type Members = Awaited<ReturnType<typeof makeMembers>>;
/** A text with the society's tag before it. */
export type Word = (what: string) => string;

/** Somebody in each office, holders, people without accounts and people who left, each with contact details. */
export async function makeMembers(society: Made, word: Word) {
  const make = async (name: string, given: Partial<Parameters<typeof makeMember>[1]> = {}) => {
    const email = `${word(name).replaceAll(' ', '-')}-mail@example.org`;
    const member = await makeMember(society, { name: word(name), email, ...given });
    // The address of a sign-in is another thing than the member's own.
    const account = { email: `${word(name).replaceAll(' ', '-')}-sign-in@example.org`, passwordHash: word('hash') };
    await db().account.updateMany({ where: { id: member.caller.accountId }, data: account });
    return member;
  };
  const members = {
    secretary: society.secretary,
    chair: await make('chair', { roles: ['chair'] }),
    treasurer: await make('treasurer', { roles: ['treasurer'] }),
    gateHelper: await make('gate helper', { roles: ['gate_helper'] }),
    holder: await make('holder'),
    neighbour: await make('neighbour'),
    spare: await make('spare'),
    former: await make('former holder'),
    left: await make('left'),
    noAccount: await make('without account', { withAccount: false }),
    invited: await make('invited', { withAccount: false }),
  };
  const { secretary, holder, neighbour, former, left, invited } = members;
  for (const [name, { caller }] of Object.entries({ secretary, holder, neighbour })) {
    const contact = { phone: word(`${name} phone`), postal: word(`${name} postal`) };
    const email = `${word(name).replaceAll(' ', '-')}-mail@example.org`;
    await done(changeOwnDetails.run(caller, once({ name: word(name), email, ...contact, units: 'metric' })));
  }
  await done(inviteMember.run(secretary.caller, once({ memberId: invited.id })));
  const today = todayIn('Europe/London');
  const gone = { id: { in: [former.id, left.id] } };
  await db().member.updateMany({ where: gone, data: { leftOn: toDbDay(addDays(today, -30)) } });
  return members;
}
