import { beforeAll, describe, expect, it } from 'vitest';
import { db, inTransaction } from '@/lib/data/db';
import { appendSharing, sharingHoldings } from '@/lib/data/result-sharing';
import { openScopeOfMember } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { makeMember, makePlot, makeSociety } from '../fixtures/society';

const today = '2026-11-28' as CalendarDate;
let at = Date.parse('2026-11-28T08:00:00Z');
let [holdingId, one, other, stranger] = ['', '', '', ''];

beforeAll(async () => {
  const society = await makeSociety();
  const members = await Promise.all([1, 2, 3].map((nth) => makeMember(society, { name: `Member ${nth}` })));
  [one = '', other = '', stranger = ''] = members.map(({ id }) => id);
  await makePlot(society, 'S1', [one, other]);
  const held = await db().holdingMember.findFirstOrThrow({ where: { memberId: one } });
  holdingId = held.holdingId;
});

const say = async (memberId: string, shares: boolean) => {
  const scope = await openScopeOfMember(db(), memberId);
  at += 60_000;
  await inTransaction((tx) => appendSharing(tx, scope, { holdingId, shares, at: new Date(at) }));
};
const isShared = async (day = today) =>
  (await sharingHoldings(db(), await openScopeOfMember(db(), stranger), day)).has(holdingId);

describe('results are shared', () => {
  it('only where a holder agreed and none says no, by the last word of each', async () => {
    expect(await isShared()).toBe(false);
    await say(one, true);
    expect(await isShared()).toBe(true);
    await say(other, false);
    expect(await isShared()).toBe(false);
    await say(one, true);
    expect(await isShared()).toBe(false);
    await say(other, true);
    expect(await isShared()).toBe(true);
    await say(one, false);
    await say(other, true);
    expect(await isShared()).toBe(false);
  });

  it('by the word of those who hold the ground on that day', async () => {
    await db().holdingMember.updateMany({ where: { memberId: one }, data: { untilOn: new Date('2026-12-01') } });
    expect(await isShared()).toBe(false);
    expect(await isShared('2026-12-01' as CalendarDate)).toBe(true);
    await db().member.update({ where: { id: other }, data: { leftOn: new Date('2026-12-05') } });
    expect(await isShared('2026-12-05' as CalendarDate)).toBe(false);
  });

  it('and what was said stands', async () => {
    await expect(db().resultSharing.updateMany({ where: { holdingId }, data: { shares: true } })).rejects.toThrow();
    await expect(db().resultSharing.deleteMany({ where: { holdingId } })).rejects.toThrow();
  });
});
