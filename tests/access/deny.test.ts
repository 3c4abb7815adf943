import fs from 'node:fs';
import path from 'node:path';
import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { toDbDay } from '@/lib/data/day';
import { db } from '@/lib/data/db';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { eraseMember } from '@/lib/usecases/members/keep-members';
import { mySocieties } from '@/lib/usecases/members/own-account';
import { readStanding } from '@/lib/usecases/members/read-standing';
import type { Caller } from '@/lib/usecases/operation';
import { done, makeMember, makeSociety, once } from '../fixtures/society';
import { answerTo, fingerprint } from './answers';
import { rows } from './matrix/rows';
import { type Ids, idsNamed, type Operation, people } from './row';
import { fillSociety, type FilledSociety } from './society';

let society: FilledSociety;
let nobodies: Readonly<Record<string, Caller>>;
let leavingLater: Caller;

beforeAll(async () => {
  society = await fillSociety();
  nobodies = await makeNobodies(society);
  leavingLater = await leaving(society, 2);
});

describe('the matrix', () => {
  it('has one row for every operation there is', async () => {
    const files = fs
      .readdirSync('lib/usecases', { recursive: true })
      .map(String)
      .filter((name) => name.endsWith('.ts'));
    const modules = await Promise.all(files.map((name) => import(path.resolve('lib/usecases', name))));
    const found = modules
      .flatMap((module) => Object.values(module as object))
      .filter((one): one is Operation => one !== null && typeof one === 'object' && 'kind' in one && 'run' in one)
      .map(({ name }) => name);
    expect(new Set(found).size).toBeGreaterThan(50);
    expect(rows.map(({ operation }) => operation.name).sort()).toEqual([...new Set(found)].sort());
  });

  it('lets the secretary do everything, but for what is a household’s own', () => {
    expect(rows.filter(({ allow, isOwn }) => allow.includes('secretary') === (isOwn ?? false))).toEqual([]);
  });
});

describe.each(rows.map((row) => [row.operation.name, row] as const))('%s', (_, { operation, input, allow }) => {
  it('does not exist for anybody who is no member today', async () => {
    const before = await fingerprint();
    for (const [who, caller] of Object.entries(nobodies))
      expect({ who, ...(await answerTo(operation, caller, input(society.ids))) }).toMatchObject({
        who,
        is: 'not found',
      });
    expect(await fingerprint()).toBe(before);
  });

  it.each(people.filter((who) => !allow.includes(who)))('does not exist for the %s', async (who) => {
    const before = await fingerprint();
    expect((await answerTo(operation, society.callers[who], input(society.ids))).is).toBe('not found');
    expect(await fingerprint()).toBe(before);
  });
});

describe('a delivery that is only planned', () => {
  const named = rows.filter(({ input }) =>
    ['openId', 'sharedId'].some((key) => idsNamed(input).includes(key as keyof Ids)),
  );

  it.each(named.map((row) => [row.operation.name, row] as const))('is not there yet: %s', async (_, row) => {
    const { plannedId, ...ids } = society.ids;
    const input = row.input({ ...ids, plannedId, openId: plannedId, sharedId: plannedId });
    for (const who of people.filter((one) => one !== 'secretary'))
      expect({ who, ...(await answerTo(row.operation, society.callers[who], input)) }).toMatchObject({
        who,
        is: 'not found',
      });
  });
});

describe('a session', () => {
  it('of somebody who leaves later is good until the day', async () => {
    expect((await answerTo(readStanding, leavingLater, {})).is).toBe('done');
    expect((await mySocieties(leavingLater)).map(({ slug }) => slug)).toEqual([society.slug]);
  });

  it('of nobody’s lists no society of ours', async () => {
    const here = Object.entries(nobodies).filter(([, { slug }]) => slug === society.slug);
    for (const [who, caller] of here)
      expect({ who, slugs: (await mySocieties(caller)).map(({ slug }) => slug) }).toEqual({
        who,
        slugs: expect.not.arrayContaining([society.slug]),
      });
  });
});

/** Everybody who has something like a session, and no membership here today. */
async function makeNobodies({ id, slug, callers }: FilledSociety): Promise<Record<string, Caller>> {
  const elsewhere = await makeSociety();
  const erase = async (alsoElsewhere: boolean) => {
    const { id: memberId, caller } = await makeMember({ id, slug });
    const there = { societyId: elsewhere.id, name: 'The same', accountId: caller.accountId, joinedOn: new Date(0) };
    if (alsoElsewhere) await db().member.create({ data: there });
    await db().member.update({ where: { id: memberId }, data: { leftOn: toDbDay(today()) } });
    await done(eraseMember.run(callers.secretary, once({ memberId, sure: 'yes' })));
    return caller;
  };
  return {
    'no account': { accountId: randomUUID(), sessionVersion: 1, slug },
    'signed out elsewhere': { ...callers.secretary, sessionVersion: 0 },
    'another society’s secretary': { ...elsewhere.secretary.caller, slug },
    'a society that is not': { ...callers.secretary, slug: `${slug}-not` },
    'leaving today': await leaving({ id, slug }, 0),
    'left yesterday': await leaving({ id, slug }, -1),
    'a secretary who left': await leaving({ id, slug }, -1, true),
    erased: await erase(false),
    'erased, at home elsewhere': await erase(true),
  };
}

async function leaving(place: { id: string; slug: string }, days: number, asSecretary = false): Promise<Caller> {
  const { id, caller } = await makeMember(place, asSecretary ? { roles: ['secretary'] } : {});
  await db().member.update({ where: { id }, data: { leftOn: toDbDay(addDays(today(), days)) } });
  return caller;
}

function today() {
  return todayIn('Europe/London');
}
