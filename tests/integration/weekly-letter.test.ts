import { type ChildProcess, spawn } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, it, onTestFinished, vi } from 'vitest';
import { db } from '@/lib/data/db';
import { makeLetters, queueWeeklyLetters } from '@/lib/usecases/reminders/weekly-letter';
import { chooseWeeklyLetter, readUnsubscribe, unsubscribe } from '@/lib/usecases/reminders/letter-wish';
import { weekLetter } from '@/app/(member)/[society]/_parts/week-letter';
import { POST } from '@/app/api/unsubscribe/[token]/route';
import { startMailSink } from '../fixtures/mail-sink';
import { openLoad } from '../fixtures/open-load';
import { done, makeMember, makePlot, makeSociety, once, refusedWith, type TestSociety } from '../fixtures/society';

const monday = '2026-11-30';
const clock = vi.hoisted(() => ({ at: new Date('2026-11-30T07:00:00Z') }));
vi.mock('@/lib/platform/clock', async (original) => {
  const real = await original<typeof import('@/lib/platform/clock')>();
  const now = () => clock.at;
  return { ...real, now, todayIn: (timeZone: string) => real.dayIn(timeZone, clock.at) };
});

const days = { arrivesOn: '2026-12-08', collectByOn: '2026-12-20', closesAt: '2026-12-05T18:00' };

/** A society with a load that can be booked, and members who want the letter. */
async function wishing(count: number): Promise<{ society: TestSociety; ids: string[] }> {
  const society = await makeSociety();
  const ids: string[] = [];
  for (let nth = 0; nth < count; nth++) {
    const member = await makeMember(society, {
      name: `Member ${nth}`,
      email: `member-${nth}@${society.slug}.example.org`,
    });
    await makePlot(society, `L${nth}`, [member.id]);
    await done(chooseWeeklyLetter.run(member.caller, once({ wanted: 'on' })));
    ids.push(member.id);
  }
  await openLoad(society, { ...days, name: 'Stable load' });
  // What was told of the load is not what is tested here.
  await db().mailMessage.deleteMany({ where: { societyId: society.id } });
  await db()
    .$executeRaw`SELECT graphile_worker.complete_jobs(array_agg(id)) FROM graphile_worker.jobs WHERE task_identifier = 'send-mail'`;
  return { society, ids };
}

const make = (memberIds: readonly string[], week = monday) =>
  makeLetters(weekLetter)({ monday: week as never, memberIds });
const lettersOf = (society: TestSociety) =>
  db().mailMessage.findMany({ where: { societyId: society.id }, orderBy: { createdAt: 'asc' } });

describe('the weekly letter', () => {
  it('says what This week says, to who wants it, and ends with one press', async () => {
    const { society, ids } = await wishing(1);
    await make(ids);
    const [letter] = await lettersOf(society);
    expect(letter?.subject).toMatch(/: 2 things this week$/);
    expect(letter?.body).toContain('Say how much you want of “Stable load”');
    expect(letter?.body).toContain(`http://127.0.0.1:3000/${society.slug}/deliveries/`);
    const token = /\/unsubscribe\/(\w+)/.exec(letter?.body ?? '')?.[1] ?? '';
    expect(letter?.endsUrl).toBe(`http://127.0.0.1:3000/api/unsubscribe/${token}`);
    expect(await readUnsubscribe(token)).toMatchObject({ wanted: true });
    await POST(new Request('http://x'), { params: Promise.resolve({ token }) });
    expect(await readUnsubscribe(token)).toMatchObject({ wanted: false });
    await make(ids, '2026-12-07');
    expect(await lettersOf(society)).toHaveLength(1);
    await unsubscribe('nobody’s');
    expect(await readUnsubscribe('0'.repeat(64))).toBeNull();
  });

  it('names what is new on the board, to who has not seen it and may', async () => {
    const { society, ids } = await wishing(2);
    const [reader = '', writer = ''] = ids;
    const at = new Date('2026-11-27T10:00:00Z');
    const begin = (title: string, more: object = {}, post: object = {}) =>
      db().thread.create({
        data: {
          ...{ societyId: society.id, kind: 'talk', title, byMemberId: writer, createdAt: at, lastPostAt: at, ...more },
          posts: { create: { byMemberId: writer, body: 'Words.', writtenAt: at, ...post } },
        },
      });
    await begin('Small onions');
    await begin('Water is off', { kind: 'notice', pinned: true });
    await begin('Please read', { kind: 'notice', mustRead: true });
    await begin('Out of order', {}, { hiddenAt: at, hiddenWhy: 'unkind' });
    await begin('Long ago', { createdAt: new Date('2026-11-20T10:00:00Z') });
    const { id } = await begin('Seen already');
    await db().threadRead.create({ data: { societyId: society.id, threadId: id, memberId: reader, readToAt: at } });
    await make(ids);
    const letters = await lettersOf(society);
    const to = (nth: number) => letters.find(({ toAddress }) => toAddress.startsWith(`member-${nth}@`))?.body ?? '';
    const news = /New on the board:\n([^]*?)\n\n/;
    expect(news.exec(to(0))?.[1]?.match(/“.*”/g)?.toSorted()).toEqual(['“Small onions”', '“Water is off”']);
    expect(to(1)).not.toMatch(news);
  });

  it('is made once, whoever tries and however many at once', async () => {
    const { society, ids } = await wishing(3);
    await Promise.all(Array.from({ length: 4 }, () => make(ids)));
    await make(ids);
    expect(await lettersOf(society)).toHaveLength(3);
    await make(ids, '2026-12-07');
    expect(await lettersOf(society)).toHaveLength(6);
  });

  it('does not come where nothing wants doing, nor to who left, nor without an address', async () => {
    const { society, ids } = await wishing(3);
    const [quiet = '', left = '', bare = ''] = ids;
    await db().delivery.updateMany({ where: { societyId: society.id }, data: { state: 'called_off' } });
    const beds = await db().plot.findMany({ where: { societyId: society.id } });
    await db().tenancy.updateMany({
      where: { plotId: { in: beds.map(({ id }) => id) } },
      data: { untilOn: new Date('2026-11-01') },
    });
    await db().member.update({ where: { id: left }, data: { leftOn: new Date('2026-11-30') } });
    await db().member.update({ where: { id: bare }, data: { email: null } });
    clock.at = new Date('2026-11-30T07:00:00Z');
    await queueWeeklyLetters();
    const queued = await db().$queryRaw<{ payload: { memberIds: string[] } }[]>`
      SELECT payload FROM graphile_worker._private_jobs j JOIN graphile_worker._private_tasks t ON t.id = j.task_id WHERE t.identifier = 'weekly-letters'`;
    const all = queued.flatMap(({ payload }) => payload.memberIds);
    expect(ids.filter((id) => all.includes(id))).toEqual([quiet]);
    await make([quiet]);
    expect(await lettersOf(society)).toEqual([]);
    expect(await db().digestSent.count({ where: { memberId: quiet } })).toBe(1);
  });

  it('is asked for with an address, and by nobody without one', async () => {
    const society = await makeSociety();
    const member = await makeMember(society);
    await db().member.update({ where: { id: member.id }, data: { email: null } });
    expect(await refusedWith(chooseWeeklyLetter.run(member.caller, once({ wanted: 'on' })))).toEqual([
      'no-address-for-mail',
    ]);
  });

  it('goes out on Monday morning where the society lives', async () => {
    const { society } = await wishing(1);
    await db().society.update({ where: { id: society.id }, data: { timeZone: 'Pacific/Auckland' } });
    const queuedAt = async (instant: string) => {
      await db()
        .$executeRaw`SELECT graphile_worker.complete_jobs(array_agg(id)) FROM graphile_worker.jobs WHERE task_identifier = 'weekly-letters'`;
      clock.at = new Date(instant);
      await queueWeeklyLetters();
      const { id } = await db().member.findFirstOrThrow({ where: { societyId: society.id, name: 'Member 0' } });
      const [row] = await db().$queryRaw<{ count: number }[]>`
        SELECT count(*)::int AS count FROM graphile_worker._private_jobs WHERE payload::text LIKE ${`%${id}%`}`;
      return row?.count;
    };
    // In November Auckland is 13 hours ahead: its Monday, 06:00, is Sunday 17:00 UTC.
    expect(await queuedAt('2026-11-29T16:59:00Z')).toBe(0);
    expect(await queuedAt('2026-11-29T17:00:00Z')).toBe(1);
    expect(await queuedAt('2026-12-02T11:00:00Z')).toBe(0);
  });
});

describe('processes that make and send letters', () => {
  const count = 60;
  let sink: Awaited<ReturnType<typeof startMailSink>>;
  beforeAll(async () => {
    sink = await startMailSink();
  });
  afterAll(() => sink.stop());

  const begin = (): ChildProcess => {
    const child = spawn(
      process.execPath,
      ['--conditions=react-server', '--import', 'tsx', 'tests/fixtures/letter-worker.ts'],
      {
        env: { ...process.env, NODE_OPTIONS: '', SMTP_URL: sink.url, BARROWMOOT_FIXED_NOW: '2026-11-30T07:00:00Z' },
        stdio: ['ignore', 'inherit', 'inherit'],
      },
    );
    onTestFinished(() => void child.kill('SIGKILL'));
    return child;
  };

  it('send each letter once, though one is killed in the middle', { timeout: 240_000 }, async () => {
    clock.at = new Date('2026-11-30T07:00:00Z');
    const { society } = await wishing(count);
    const made = () => db().digestSent.count({ where: { societyId: society.id } });
    const [doomed] = [begin(), begin()];
    await vi.waitUntil(async () => (await made()) >= 10, { timeout: 120_000, interval: 10 });
    doomed?.kill('SIGKILL');
    expect(await made()).toBeLessThan(count);
    // What the dead one had in hand is let go of after four hours; here they pass at once, and another begins.
    await db()
      .$executeRaw`UPDATE graphile_worker._private_jobs SET locked_at = locked_at - interval '5 hours' WHERE locked_at IS NOT NULL`;
    begin();
    const sent = () => db().mailMessage.count({ where: { societyId: society.id, sentAt: { not: null } } });
    await vi.waitUntil(async () => (await made()) === count && (await sent()) === count, {
      timeout: 180_000,
      interval: 100,
    });
    const ours = [...sink.received.values()].filter(({ text }) => text.includes(`@${society.slug}.example.org`));
    expect(ours).toHaveLength(count);
    expect(new Set(ours.map(({ text }) => /^To: (\S+)/im.exec(text)?.[1])).size).toBe(count);
    expect(ours[0]?.text).toMatch(/^List-Unsubscribe: <http:\/\/127\.0\.0\.1:3000\/api\/unsubscribe\/\w{64}>/im);
    expect(ours[0]?.text).toMatch(/^List-Unsubscribe-Post: List-Unsubscribe=One-Click/im);
    // What is sent keeps no words and no key.
    expect(
      await db().mailMessage.count({
        where: { societyId: society.id, OR: [{ body: { not: '' } }, { endsUrl: { not: null } }] },
      }),
    ).toBe(0);
  });
});
