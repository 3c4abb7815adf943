import { beforeEach, describe, expect, it, vi } from 'vitest';
import { dueItem } from '@/app/(member)/[society]/_parts/due-item';
import { datedWords } from '@/app/_server/words/dated';
import { db } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { closeBallot } from '@/lib/usecases/ballots/close-ballot';
import { openBallot, withdrawBallot } from '@/lib/usecases/ballots/open-ballot';
import { changeQuestion, draftQuestion } from '@/lib/usecases/ballots/put-question';
import { enterHand, raiseHand } from '@/lib/usecases/ballots/raise-hand';
import { readBallot, readBallots, readMinutes } from '@/lib/usecases/ballots/read-ballots';
import { readSiteNeed } from '@/lib/usecases/ground/read-site-need';
import { NotFound } from '@/lib/usecases/refusal';
import { changeSetting, readSettings } from '@/lib/usecases/settings/settings';
import { datesOfMember, dueOfMember } from '@/lib/usecases/week/due';
import { readWeek } from '@/lib/usecases/week/read-week';
import { question } from '../fixtures/question';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

// The clock that the use-cases read, moved by hand; only `now` is ours.
const clock = vi.hoisted(() => ({ at: new Date() }));
vi.mock('@/lib/platform/clock', async (original) => {
  const real = await original<typeof import('@/lib/platform/clock')>();
  const now = () => clock.at;
  return { ...real, now, todayIn: (timeZone: string) => real.dayIn(timeZone, clock.at) };
});

const closing = '2026-12-08T18:00';
let society: TestSociety;
let secretary: TestMember['caller'];
let ada: TestMember;
let ben: TestMember;

beforeEach(async () => {
  clock.at = new Date('2026-12-01T09:00:00Z');
  society = await makeSociety();
  secretary = society.secretary.caller;
  [ada, ben] = [
    await makeMember(society, { name: 'Ada' }),
    await makeMember(society, { name: 'Ben' }),
    await makeMember(society, { name: 'Cat', withAccount: false }),
  ];
});

const after = () => void (clock.at = new Date(`${closing}:01Z`));
const draft = async (change: Record<string, string> = {}) =>
  (await done(draftQuestion.run(secretary, once(question({ closesAt: closing, ...change }))))).ballotId;
const open = async (ballotId: string) => done(openBallot.run(secretary, once({ ballotId, sure: 'yes' })));
const put = async (change: Record<string, string> = {}) => {
  const { ballotId } = await open(await draft(change));
  return ballotId;
};
const choiceOf = async (ballotId: string, words: string) =>
  (await db().ballotChoice.findFirstOrThrow({ where: { ballotId, words } })).id;
const raise = async (who: TestMember, ballotId: string, words: string, holdingId = '') =>
  raiseHand.run(who.caller, once({ ballotId, holdingId, choiceId: await choiceOf(ballotId, words) }));
const interval = { settingKey: 'manuringIntervalYears', settingValue: '5', settingFrom: '2026-12-10' };
const kept = (ballotId: string) => db().ballot.findUniqueOrThrow({ where: { id: ballotId } });

describe('a question', () => {
  it('is the committee’s until it is opened, and never changes after', async () => {
    const ballotId = await draft();
    await expect(readBallot.run(ada.caller, { ballotId })).rejects.toThrow(NotFound);
    expect((await readBallots.run(ada.caller, {})).drafts).toEqual([]);
    await done(changeQuestion.run(secretary, once(question({ ballotId, title: 'At noon?', closesAt: closing }))));
    await expect(raise(ada, ballotId, 'For')).rejects.toThrow(NotFound);
    await open(ballotId);
    const again = changeQuestion.run(secretary, once(question({ ballotId, closesAt: closing })));
    expect(await refusedWith(again)).toEqual(['question-stands']);
    const id = ballotId;
    for (const sql of [
      `UPDATE "Ballot" SET "title" = 'x' WHERE "id" = '${id}'`,
      `UPDATE "Ballot" SET "quorum" = 1 WHERE "id" = '${id}'`,
      `UPDATE "Ballot" SET "closesAt" = "closesAt" + interval '1 day' WHERE "id" = '${id}'`,
      `UPDATE "Ballot" SET "state" = 'draft', "openedAt" = NULL, "entitled" = NULL WHERE "id" = '${id}'`,
      `UPDATE "BallotChoice" SET "words" = 'x' WHERE "ballotId" = '${id}'`,
      `DELETE FROM "BallotChoice" WHERE "ballotId" = '${id}'`,
      `DELETE FROM "BallotRoll" WHERE "ballotId" = '${id}'`,
      `DELETE FROM "Ballot" WHERE "id" = '${id}'`,
    ])
      await expect(db().$executeRawUnsafe(sql), sql).rejects.toThrow();
    expect((await readBallot.run(ada.caller, { ballotId })).ballot.title).toBe('At noon?');
  });

  it.each([
    [{ kind: 'choice', choices: 'One' }, 'choices-two-to-eight'],
    [{ kind: 'choice', choices: 'One\none' }, 'choices-alike'],
    [{ kind: 'choice', choices: 'One\nabstain' }, 'choices-alike'],
    [{ kind: 'choice', choices: 'a\nb\nc\nd\ne\nf\ng\nh\ni' }, 'choices-two-to-eight'],
    [{ kind: 'choice', choices: `a\n${'b'.repeat(121)}` }, 'choice-too-long'],
    [{ quorum: '101', quorumKind: 'percent' }, 'quorum-over-hundred'],
    [{ closesAt: '2026-12-01T08:59' }, 'count-closes-in-the-past'],
    [{ ...interval, kind: 'choice', choices: 'a\nb' }, 'rule-by-motion-only'],
    [{ ...interval, settingFrom: '2026-12-07' }, 'rule-before-closing'],
    [{ ...interval, settingValue: '11' }, 'setting-out-of-range'],
    [{ settingKey: 'neighboursSee', settingValue: 'everything' }, 'setting-no-such-choice'],
    [{ settingKey: 'seasonFrom', settingValue: '1 September' }, 'season-window-inside-out'],
  ])('%j is refused: %s', async (change, code) => {
    const outcome = draftQuestion.run(
      secretary,
      once(question({ closesAt: closing, ...(change as Record<string, string>) })),
    );
    expect(await refusedWith(outcome)).toEqual([code]);
  });

  it('is not opened with a quorum that the roll cannot reach', async () => {
    const ballotId = await draft({ quorum: '5' });
    expect(await refusedWith(openBallot.run(secretary, once({ ballotId, sure: 'yes' })))).toEqual([
      'quorum-beyond-roll',
    ]);
    expect((await kept(ballotId)).state).toBe('draft');
  });

  it('withdrawn stays on record with the reason, and takes no hand', async () => {
    const ballotId = await put();
    await done(withdrawBallot.run(secretary, once({ ballotId, why: 'Put wrongly' })));
    expect(await refusedWith(raise(ada, ballotId, 'For'))).toEqual(['withdrawn-already']);
    after();
    const { withdrawn, closed } = await readBallots.run(ada.caller, {});
    expect([withdrawn.map(({ withdrawnWhy }) => withdrawnWhy), closed]).toEqual([['Put wrongly'], []]);
    await expect(
      db().$executeRaw`UPDATE "Ballot" SET "withdrawnWhy" = 'x' WHERE "id" = ${ballotId}::uuid`,
    ).rejects.toThrow();
  });
});

describe('a hand', () => {
  it('is one’s own until the close, and everybody’s after; the last one counts', async () => {
    const ballotId = await put();
    await done(raise(ada, ballotId, 'Against'));
    await done(raise(ada, ballotId, 'For'));
    await done(raise(ben, ballotId, 'Against'));
    const [forIt, against] = [await choiceOf(ballotId, 'For'), await choiceOf(ballotId, 'Against')];
    const seen = await readBallot.run(ada.caller, { ballotId });
    expect(seen).toMatchObject({ raised: 2, result: null, own: [{ choiceId: forIt }] });
    const byChair = JSON.stringify(await readBallot.run(secretary, { ballotId }));
    expect(byChair).not.toContain('Ben');
    expect(byChair.split(against)).toHaveLength(2);
    const book = JSON.stringify(await db().auditRow.findMany({ where: { societyId: society.id } }));
    const replies = JSON.stringify(await db().writeOnce.findMany({ where: { societyId: society.id } }));
    expect(`${book}${replies}`).not.toContain(forIt);
    after();
    expect(await refusedWith(raise(ada, ballotId, 'Abstain'))).toEqual(['count-is-closed']);
    const { result } = await readBallot.run(ben.caller, { ballotId });
    expect(result).toMatchObject({ hands: 2, entitled: 4, outcome: 'not-carried', carried: null });
    expect(result?.counts.map(({ words, by }) => [words, by.map(({ name }) => name)])).toEqual([
      ['For', ['Ada']],
      ['Against', ['Ben']],
      ['Abstain', []],
    ]);
  });

  it('is entered by the secretary for a member without an account, and said to be', async () => {
    const ballotId = await put();
    const { onPaper } = await readBallot.run(secretary, { ballotId });
    expect(onPaper).toMatchObject([{ name: 'Cat', isRaised: false }]);
    expect((await readBallot.run(ada.caller, { ballotId })).onPaper).toEqual([]);
    const choiceId = await choiceOf(ballotId, 'For');
    await done(enterHand.run(secretary, once({ ballotId, rollId: onPaper[0]?.id, choiceId })));
    const others = await db().ballotRoll.findFirstOrThrow({ where: { ballotId, memberId: ada.id } });
    await expect(enterHand.run(secretary, once({ ballotId, rollId: others.id, choiceId }))).rejects.toThrow(NotFound);
    after();
    const { result } = await readBallot.run(ada.caller, { ballotId });
    expect(result?.counts[0]?.by).toEqual([{ name: 'Cat', plots: [], enteredBy: 'The secretary' }]);
  });

  it('is of the roll on the day it opened: who came later has none, and is told why; who left stays on it', async () => {
    const ballotId = await put();
    await done(raise(ben, ballotId, 'For'));
    const late = await makeMember(society, { name: 'Late' });
    await db().member.update({ where: { id: late.id }, data: { joinedOn: new Date('2026-12-02') } });
    await db().member.update({ where: { id: ben.id }, data: { leftOn: new Date('2026-12-03') } });
    clock.at = new Date('2026-12-04T09:00:00Z');
    expect(await refusedWith(raise(late, ballotId, 'For'))).toEqual(['not-on-the-roll']);
    await expect(raise(ben, ballotId, 'Against')).rejects.toThrow(NotFound);
    expect((await readBallot.run(late.caller, { ballotId })).noHand).toBe('joined-later');
    after();
    const { result } = await readBallot.run(late.caller, { ballotId });
    expect(result).toMatchObject({ entitled: 4, hands: 1, outcome: 'carried' });
  });

  it('of a holding is raised by any of its holders, the last one counts, and it is said whose it was', async () => {
    const plot = await makePlot(society, 'A1', [ada.id, ben.id]);
    const other = await makePlot(society, 'A2', [ben.id]);
    const ballotId = await put({ handsBy: 'holding' });
    expect(await refusedWith(raise(ada, ballotId, 'For'))).toEqual(['not-on-the-roll']);
    await expect(raise(ada, ballotId, 'For', other.holdingId)).rejects.toThrow(NotFound);
    await done(raise(ada, ballotId, 'For', plot.holdingId));
    const due = (await readWeek.run(ben.caller, {})).due.filter(({ code }) => code === 'raise-hand');
    expect(due).toMatchObject([{ ballotId, hands: 1, daysLeft: 7 }]);
    await done(raise(ben, ballotId, 'Against', plot.holdingId));
    const { own, noHand } = await readBallot.run(ada.caller, { ballotId });
    expect([own[0]?.raised?.by, own[0]?.choiceId, noHand]).toEqual(['Ben', await choiceOf(ballotId, 'Against'), null]);
    expect((await readBallot.run(secretary, { ballotId })).noHand).toBe('no-holding');
    after();
    const { result } = await readBallot.run(ada.caller, { ballotId });
    expect(result).toMatchObject({ entitled: 2, hands: 1, outcome: 'not-carried' });
    expect(result?.counts[1]?.by).toEqual([{ name: 'Ben', plots: ['A1'], enteredBy: null }]);
  });
});

describe('the close', () => {
  it('freezes one result, however many close at once and whatever hands come with it', async () => {
    const ballotId = await put();
    const members = await Promise.all(Array.from({ length: 6 }, () => makeMember(society)));
    const later = await put({ title: 'Another' });
    // On the roll of this one too, as if they had been there: the trigger lets nobody else write it.
    for (const { id: memberId } of members)
      await db().$transaction([
        db().$executeRaw`SET LOCAL session_replication_role = replica`,
        db().$executeRaw`INSERT INTO "BallotRoll" ("id", "societyId", "ballotId", "memberId")
          VALUES (gen_random_uuid(), ${society.id}::uuid, ${ballotId}::uuid, ${memberId}::uuid)`,
        db().$executeRaw`UPDATE "Ballot" SET "entitled" = "entitled" + 1 WHERE "id" = ${ballotId}::uuid`,
      ]);
    const forIt = await choiceOf(ballotId, 'For');
    const job = { ballotId, memberId: society.secretary.id };
    // By their clock they came in time; what decides is who reached the database first.
    const hands = members.map(({ id: memberId }) =>
      db()
        .hand.create({
          data: {
            ...{ societyId: society.id, ballotId, choiceId: forIt, memberId, raisedByMemberId: memberId },
            at: new Date('2026-12-08T17:59:59.999Z'),
          },
        })
        .then(
          () => true,
          () => false,
        ),
    );
    after();
    const closes = [
      closeBallot(job),
      readBallots.run(ada.caller, {}),
      closeBallot(job),
      readMinutes.run(ben.caller, {}),
    ];
    const taken = (await Promise.all(hands)).filter(Boolean).length;
    await Promise.all(closes);
    const { state, result, number } = await kept(ballotId);
    expect(result).toMatchObject({ hands: taken });
    expect(await db().hand.count({ where: { ballotId } })).toBe(taken);
    expect(state).toBe('closed');
    const numbers = [number, (await kept(later)).number].sort();
    expect(numbers).toEqual([1, 2]);
    const book = await db().auditRow.findMany({ where: { thingId: ballotId, verb: 'closed' } });
    expect(book.map(({ actorMemberId }) => actorMemberId)).toEqual([null]);
    const { memberId } = { memberId: ada.id };
    const late = { societyId: society.id, ballotId, choiceId: forIt, memberId, raisedByMemberId: memberId };
    await expect(db().hand.create({ data: { ...late, at: new Date('2026-12-08T17:00:00Z') } })).rejects.toThrow();
  });

  it('by the queue comes when its time has come and not before', async () => {
    const ballotId = await put();
    const queued = await db().$queryRaw<{ run_at: Date }[]>`
      SELECT run_at FROM graphile_worker.jobs WHERE key = ${`close-ballot ${ballotId}`}`;
    expect(queued.map(({ run_at }) => run_at.toISOString())).toEqual(['2026-12-08T18:00:01.000Z']);
    const job = { ballotId, memberId: society.secretary.id };
    await expect(closeBallot(job)).rejects.toThrow(/not over/);
    expect((await kept(ballotId)).state).toBe('open');
    after();
    await closeBallot(job);
    expect((await kept(ballotId)).state).toBe('closed');
  });

  it('leaves a result that nobody changes, and that counts the hands that lie there', async () => {
    const ballotId = await put();
    await done(raise(ada, ballotId, 'For'));
    const wrong = db().ballot.update({
      where: { id: ballotId },
      data: { state: 'closed', number: 9, closedAt: new Date('2026-12-09'), result: { hands: 2 } },
    });
    await expect(wrong).rejects.toThrow();
    const early = db().ballot.update({
      where: { id: ballotId },
      data: { state: 'closed', number: 9, closedAt: new Date('2026-12-02'), result: { hands: 1 } },
    });
    await expect(early).rejects.toThrow();
    after();
    await readBallots.run(ada.caller, {});
    const frozen = await kept(ballotId);
    for (const sql of [
      `UPDATE "Ballot" SET "result" = '{"hands": 1}' WHERE "id" = '${ballotId}'`,
      `UPDATE "Ballot" SET "applied" = NULL, "number" = 7 WHERE "id" = '${ballotId}'`,
      `UPDATE "Hand" SET "at" = now() WHERE "ballotId" = '${ballotId}'`,
      `DELETE FROM "Hand" WHERE "ballotId" = '${ballotId}'`,
    ])
      await expect(db().$executeRawUnsafe(sql), sql).rejects.toThrow();
    expect(await kept(ballotId)).toEqual(frozen);
  });

  it('below the quorum carries nothing, abstentions counted', async () => {
    const [short, met] = [
      await put({ quorum: '51', quorumKind: 'percent' }),
      await put({ quorum: '50', quorumKind: 'percent' }),
    ];
    for (const id of [short, met]) {
      await done(raise(ada, id, 'For'));
      await done(raise(ben, id, 'Abstain'));
    }
    after();
    const outcomes = (await readMinutes.run(ada.caller, {})).decisions.map(({ id, result }) => [id, result.outcome]);
    expect(Object.fromEntries(outcomes)).toEqual({ [short]: 'no-quorum', [met]: 'carried' });
  });
});

describe('a rule', () => {
  const inForce = async () => (await readSettings.run(ada.caller, {})).values.manuringIntervalYears;

  it('that is carried holds from its day and not a day before: turns follow it', async () => {
    const plot = await makePlot(society, 'A1', [ada.id]);
    const bed = await makeBed(society, plot);
    // Manured for 2024: due again for 2027 after three years, and not after five.
    await db().groundWork.create({
      data: { societyId: society.id, frameId: plot.frameId, ...bed.footprint, season: 2024 },
    });
    const loads = async () => {
      const answer = await readSiteNeed.run(secretary, {});
      return 'holdings' in answer ? answer.holdings?.map((one) => JSON.stringify(one)).join('') : '';
    };
    const before = await loads();
    const ballotId = await put(interval);
    await done(raise(ada, ballotId, 'For'));
    after();
    await closeBallot({ ballotId, memberId: society.secretary.id });
    expect((await kept(ballotId)).applied).toBe('set');
    for (const day of ['2026-12-08T23:00:00Z', '2026-12-09T12:00:00Z', '2026-12-09T23:59:59Z']) {
      clock.at = new Date(day);
      expect([day, await inForce(), await loads()]).toEqual([day, 3, before]);
    }
    clock.at = new Date('2026-12-10T00:00:00Z');
    expect(await inForce()).toBe(5);
    expect(await loads()).not.toBe(before);
    const { history } = await readSettings.run(ada.caller, {});
    expect(history[0]).toMatchObject({
      value: 5,
      from: '2026-12-10',
      carried: { ballotId, number: 1, on: '2026-12-08' },
    });
    const book = await db().auditRow.findMany({ where: { societyId: society.id, thing: 'setting' } });
    expect(book.map(({ actorMemberId, after: set }) => [actorMemberId, set])).toEqual([
      [null, { key: 'manuringIntervalYears', value: 5, from: '2026-12-10', ballotId }],
    ]);
  });

  it.each([
    ['not carried', ['Against'], '0'],
    ['without a quorum', ['For'], '2'],
    ['with hands that stand equal', ['For', 'Against'], '0'],
  ])('%s changes nothing', async (_, words, quorum) => {
    const ballotId = await put({ ...interval, quorum });
    for (const [at, word] of words.entries()) await done(raise([ada, ben][at] ?? ada, ballotId, word));
    after();
    await readBallots.run(ada.caller, {});
    clock.at = new Date('2027-01-01T00:00:00Z');
    expect(await inForce()).toBe(3);
    expect((await kept(ballotId)).applied).toBeNull();
    expect(await db().societySetting.count({ where: { societyId: society.id } })).toBe(0);
  });

  it('that the others no longer allow when it is carried is not set, and it is said why', async () => {
    const ballotId = await put({ settingKey: 'seasonFrom', settingValue: '1 August' });
    await done(raise(ada, ballotId, 'For'));
    await done(changeSetting.run(secretary, once({ key: 'seasonTo', value: '31 July', from: '2026-12-02' })));
    after();
    const { decisions } = await readMinutes.run(ada.caller, {});
    expect(decisions[0]).toMatchObject({ applied: 'window-inside-out', result: { outcome: 'carried' } });
    expect((await readSettings.run(ada.caller, {})).values.seasonFrom).toBe('05-01');
  });

  it('and its count stand in the week, the letter and the calendar of whoever has a hand', async () => {
    const ballotId = await put(interval);
    const scope = await openScopeOfMember(db(), ada.id);
    const context = { db: db(), scope, now: clock.at, today: calendarDate('2026-12-01') };
    const [due] = await dueOfMember(context, []);
    const week = { society: 's', today: context.today, timeZone: 'Europe/London', units: 'metric' as const };
    expect(due && dueItem(due, week)).toMatchObject({
      when: '7 days left',
      what: 'Raise your hand: “Shall the gate be shut at dusk?”',
      action: { href: `/s/board/decisions/${ballotId}` },
    });
    const [day] = await datesOfMember(context, []);
    expect(day).toMatchObject({ from: '2026-12-08', to: '2026-12-08' });
    expect(day && datedWords(day)).toMatchObject({
      title: 'Count of hands closes: Shall the gate be shut at dusk?',
      path: `/board/decisions/${ballotId}`,
    });
    await done(raise(ada, ballotId, 'Abstain'));
    expect(await dueOfMember(context, [])).toEqual([]);
    after();
    expect(await datesOfMember({ ...context, now: clock.at }, [])).toEqual([]);
  });

  it('is told to everybody, and to whoever has a hand', async () => {
    const ballotId = await put(interval);
    await done(raise(ada, ballotId, 'For'));
    after();
    await closeBallot({ ballotId, memberId: society.secretary.id });
    const mails = await db().mailMessage.findMany({ where: { societyId: society.id }, orderBy: { createdAt: 'asc' } });
    const subjects = new Set(mails.map(({ subject }) => subject.split(': ').slice(1).join(': ')));
    expect([...subjects]).toEqual([
      'raise your hand: Shall the gate be shut at dusk?',
      'a rule of the society has changed',
    ]);
    expect(mails.at(-1)?.body).toContain('A count of hands has changed a rule: “Manuring interval” is 5 years');
  });
});
