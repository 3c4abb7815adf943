import { describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addDays, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { hashPassword, sha256Hex } from '@/lib/platform/secret';
import { inviteMember, withdrawInvitation } from '@/lib/usecases/members/invite-member';
import { join } from '@/lib/usecases/members/join';
import { addMember, eraseMember, memberLeaves } from '@/lib/usecases/members/keep-members';
import { mySocieties } from '@/lib/usecases/members/own-account';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { askForReset, resetPassword } from '@/lib/usecases/members/reset-password';
import { signIn } from '@/lib/usecases/members/sign-in';
import { NotFound } from '@/lib/usecases/refusal';
import { done, makeMember, makePlot, makeSociety, once, refusedWith } from '../fixtures/society';

const password = 'three odd words';
const tokenOf = (link: string | null) => link?.split('/').at(-1) ?? '';

async function makeAccount(email: string) {
  return db().account.create({ data: { email, passwordHash: await hashPassword(password) } });
}

describe('an invitation', () => {
  it('lets its member in once, and its token is kept nowhere but in the mail', async () => {
    const society = await makeSociety();
    const member = await makeMember(society, { withAccount: false, email: null });
    const write = once({ memberId: member.id });
    const { link } = await done(inviteMember.run(society.secretary.caller, write));
    expect((await done(inviteMember.run(society.secretary.caller, write))).link).toBe(link);
    const added = await done(
      addMember.run(society.secretary.caller, once({ name: 'New', email: '', phone: '', postal: '', invite: 'yes' })),
    );
    const kept = JSON.stringify(await db().writeOnce.findMany({ where: { societyId: society.id } }));
    for (const token of [link, added.link].map(tokenOf)) {
      expect(token.length).toBeGreaterThan(40);
      expect(kept).not.toContain(token);
    }
    const given = { token: tokenOf(link), email: 'joiner@example.org', newPassword: password };
    expect((await done(join(once(given), 'here'))).slug).toBe(society.slug);
    expect(await refusedWith(join(once(given), 'here'))).toEqual(['link-no-longer-good']);
  });

  it('can be withdrawn, once', async () => {
    const society = await makeSociety();
    const { id: memberId } = await makeMember(society, { withAccount: false });
    const { link } = await done(inviteMember.run(society.secretary.caller, once({ memberId })));
    await done(withdrawInvitation.run(society.secretary.caller, once({ memberId })));
    expect(await refusedWith(withdrawInvitation.run(society.secretary.caller, once({ memberId })))).toEqual([
      'no-link-to-withdraw',
    ]);
    const given = { token: tokenOf(link), email: 'late@example.org', newPassword: password };
    expect(await refusedWith(join(once(given), 'here'))).toEqual(['link-no-longer-good']);
  });

  it('is no way round the limit on guessing a password', async () => {
    const society = await makeSociety();
    const member = await makeMember(society, { withAccount: false });
    await makeAccount('guessed@example.org');
    const { link } = await done(inviteMember.run(society.secretary.caller, once({ memberId: member.id })));
    const guess = { token: tokenOf(link), email: 'guessed@example.org', newPassword: 'not the password' };
    for (let tries = 0; tries < 10; tries++)
      expect(await refusedWith(join(once(guess), 'there'))).toEqual(['address-has-account']);
    expect(await refusedWith(join(once({ ...guess, newPassword: password }), 'there'))).toEqual(['too-many-attempts']);
    expect(await refusedWith(signIn(once({ email: guess.email, password }), 'elsewhere'))).toEqual([
      'too-many-attempts',
    ]);
  });
});

describe('a new password', () => {
  it('makes every earlier link for one useless', async () => {
    await makeAccount('reset@example.org');
    await askForReset(once({ email: 'reset@example.org' }), 'here');
    await askForReset(once({ email: 'reset@example.org' }), 'here');
    const mails = await db().mailMessage.findMany({ where: { toAddress: 'reset@example.org' } });
    const [first, second] = mails.map(({ body }) => /reset\/(\S+)/.exec(body)?.[1] ?? '');
    await done(resetPassword(once({ token: second, newPassword: 'another three words' })));
    expect(await refusedWith(resetPassword(once({ token: first, newPassword: 'a thief chose this' })))).toEqual([
      'link-no-longer-good',
    ]);
  });

  it('is mailed a few times an hour, whoever asks', async () => {
    await makeAccount('pestered@example.org');
    for (let asked = 0; asked < 6; asked++)
      expect((await askForReset(once({ email: 'pestered@example.org' }), `network ${asked}`)).ok).toBe(true);
    expect(await db().mailMessage.count({ where: { toAddress: 'pestered@example.org' } })).toBe(3);
  });
});

describe('too many attempts', () => {
  it('say how long the wait still is', async () => {
    const [email, at] = ['patient@example.org', Date.now()];
    const minutesAgo = (minutes: number) => new Date(at - minutes * 60_000);
    const key = sha256Hex(`address ${email}`);
    const failed = [14, ...Array<number>(10).fill(3)].map((minutes) => ({
      key,
      succeeded: false,
      at: minutesAgo(minutes),
    }));
    await db().signInAttempt.createMany({ data: failed });
    // The one of 14 minutes ago is of no matter: it is the ten of three minutes ago that must pass.
    const outcome = await signIn(once({ email, password }), 'anywhere');
    expect(outcome).toMatchObject({ ok: false, refusals: [{ code: 'too-many-attempts', numbers: { minutes: 12 } }] });
  });
});

describe('leaving', () => {
  it('on a day to come leaves the door open until then', async () => {
    const society = await makeSociety();
    const member = await makeMember(society, { roles: ['treasurer'] });
    const leave = {
      memberId: member.id,
      on: addDays(calendarDate(new Date().toISOString().slice(0, 10)), 3),
      sure: 'yes',
    };
    await done(memberLeaves.run(society.secretary.caller, once(leave)));
    expect((await readStanding.run(member.caller, {})).roles).toEqual([]);
    expect(await mySocieties(member.caller)).toHaveLength(1);
    await db().member.update({ where: { id: member.id }, data: { leftOn: new Date('2026-01-01') } });
    await expect(readStanding.run(member.caller, {})).rejects.toThrow(NotFound);
    expect(await mySocieties(member.caller)).toEqual([]);
  });

  it('is for a secretary too, unless they are the last', async () => {
    const society = await makeSociety();
    const second = await makeMember(society, { roles: ['secretary'] });
    const leave = { on: '2026-01-01', sure: 'yes' };
    await done(memberLeaves.run(second.caller, once({ ...leave, memberId: society.secretary.id })));
    expect(await refusedWith(memberLeaves.run(second.caller, once({ ...leave, memberId: second.id })))).toEqual([
      'last-secretary',
    ]);
  });

  it('and being erased takes the account, unless another society knows it', async () => {
    const [society, other] = [await makeSociety(), await makeSociety()];
    const [here, both] = [await makeMember(society), await makeMember(society)];
    await makeMember(other);
    await db().member.create({
      data: {
        societyId: other.id,
        name: 'The same',
        accountId: both.caller.accountId,
        joinedOn: new Date('2020-01-01'),
      },
    });
    for (const { id: memberId } of [here, both]) {
      await done(memberLeaves.run(society.secretary.caller, once({ memberId, on: '2026-01-01', sure: 'yes' })));
      await done(eraseMember.run(society.secretary.caller, once({ memberId, sure: 'yes' })));
    }
    expect(await db().account.count({ where: { id: here.caller.accountId } })).toBe(0);
    expect(await mySocieties(both.caller)).toHaveLength(1);
  });

  it('is refused in words on a day before they came, or before they took ground', async () => {
    const society = await makeSociety();
    const member = await makeMember(society);
    await makePlot(society, 'A1', [member.id, society.secretary.id]);
    const leave = { memberId: member.id, on: '2018-01-01', sure: 'yes' };
    expect(await refusedWith(memberLeaves.run(society.secretary.caller, once(leave)))).toEqual(['leaves-before-start']);
    await done(memberLeaves.run(society.secretary.caller, once({ ...leave, on: '2026-01-01' })));
  });

  it('and being erased takes the mail that was sent to them too', async () => {
    const society = await makeSociety();
    const { id: memberId } = await makeMember(society, { withAccount: false, email: 'gone@example.org' });
    await done(inviteMember.run(society.secretary.caller, once({ memberId })));
    await done(memberLeaves.run(society.secretary.caller, once({ memberId, on: '2026-01-01', sure: 'yes' })));
    await done(eraseMember.run(society.secretary.caller, once({ memberId, sure: 'yes' })));
    expect(await db().mailMessage.count({ where: { toAddress: 'gone@example.org' } })).toBe(0);
  });
});
