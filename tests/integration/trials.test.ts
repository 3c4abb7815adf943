import { createHash, randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { now, todayIn } from '@/lib/platform/clock';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { logHarvest } from '@/lib/usecases/harvest/keep-harvests';
import type { ReadContext } from '@/lib/usecases/operation';
import { drawTrials } from '@/lib/usecases/trials/draw-trial';
import { giveResult } from '@/lib/usecases/trials/give-result';
import { joinTrial } from '@/lib/usecases/trials/join-trial';
import { leaveTrial, treatBlock } from '@/lib/usecases/trials/keep-block';
import { callOffTrial, proposeTrial } from '@/lib/usecases/trials/propose-trial';
import { readTrialReport } from '@/lib/usecases/trials/read-report';
import { readTrial, readTrials } from '@/lib/usecases/trials/read-trials';
import { datesOfMember, dueOfMember, ownHoldings } from '@/lib/usecases/week/due';
import { proposal } from '../access/fill/trials';
import { joinedTrial, joinHalves, type Joining } from '../fixtures/laid-out-trial';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
} from '../fixtures/society';

// What the database says; the name of a guard stands in the lines of this file that an error quotes.
const says = {
  trial_fixed: /stays as it was opened/,
  trial_joining: /joining is closed/,
  trial_block_once: /failed on the constraint: `trial_block_once`/,
  trial_block_fixed: /stays as it joined/,
  trial_layout_fixed: /layout is never changed/,
  trial_results_open: /no results now/,
  written_once: /never changed or removed/,
};

const today = todayIn('Europe/London');
let society: Awaited<ReturnType<typeof makeSociety>>;
let growers: (Joining & { readonly member: TestMember; readonly plotId: string; readonly secondBedId: string })[];

beforeAll(async () => {
  society = await makeSociety();
  growers = [];
  for (const number of ['1', '2', '3', '4']) {
    const member = await makeMember(society);
    const plot = await makePlot(society, number, [member.id]);
    const [bed, second] = [await makeBed(society, plot), await makeBed(society, plot, 1)];
    growers.push({ member, memberId: member.id, ...plot, bedId: bed.id, secondBedId: second.id });
  }
});

const grower = (nth: number) => growers[nth] ?? raise();
const callerOf = (nth: number) => grower(nth).member.caller;
function raise(): never {
  throw new Error('there is no such grower');
}
const halves = ({ bedId }: Joining, trialId: string) =>
  once({ trialId, first: `${bedId}:first`, second: `${bedId}:second`, agree: 'yes' });
const give = (nth: number, groundId: string, amount: string, source = 'typed') =>
  giveResult.run(callerOf(nth), once({ groundId, source, amount, sure: 'yes' }));
const own = async (nth: number, trialId: string) => {
  const [block] = (await readTrial.run(callerOf(nth), { trialId })).mine;
  return block ?? raise();
};
const drawn = async (change: object = {}) => {
  const trialId = await joinedTrial(society.secretary.id, growers, { question: randomUUID(), ...change });
  await drawTrials();
  return trialId;
};
const guard = (name: keyof typeof says, act: Promise<unknown>) => expect(act).rejects.toThrow(says[name]);

describe('joining', () => {
  it('with two pieces of one plot, once, while it is open; leaving is free', async () => {
    const { trialId } = await done(proposeTrial.run(callerOf(3), once(proposal())));
    const one = grower(0);
    const join = (change: object) => refusedWith(joinTrial.run(callerOf(0), { ...halves(one, trialId), ...change }));
    expect(await join({ second: `${one.bedId}:first` })).toEqual(['trial-ground-overlaps']);
    expect(await join({ second: `${one.bedId}:whole` })).toEqual(['trial-ground-overlaps']);
    const { blockId } = await done(joinTrial.run(callerOf(0), halves(one, trialId)));
    expect(await join({ first: `${one.secondBedId}:first`, second: `${one.secondBedId}:second` })).toEqual([
      'trial-joined-already',
    ]);
    const other = await done(proposeTrial.run(callerOf(3), once(proposal())));
    expect(await join({ trialId: other.trialId })).toEqual(['trial-ground-taken']);
    await done(leaveTrial.run(callerOf(0), once({ blockId })));
    expect(await refusedWith(leaveTrial.run(callerOf(0), once({ blockId })))).toEqual(['trial-left-already']);
    await done(joinTrial.run(callerOf(0), halves(one, trialId)));
    const { plots, state, lot, mine } = await readTrial.run(callerOf(0), { trialId });
    expect({ plots, state, lot, joined: mine.length }).toEqual({ plots: 1, state: 'joining', lot: null, joined: 1 });
  });

  it('two that send at once make one block of a plot', async () => {
    const { trialId } = await done(proposeTrial.run(callerOf(3), once(proposal())));
    const beds = grower(1);
    const outcomes = await Promise.all([
      joinTrial.run(callerOf(1), halves(beds, trialId)),
      joinTrial.run(callerOf(1), halves({ ...beds, bedId: beds.secondBedId }, trialId)),
    ]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect((await readTrial.run(callerOf(1), { trialId })).plots).toBe(1);
  });

  it('ground of two plots is refused', async () => {
    const { trialId } = await done(proposeTrial.run(callerOf(3), once(proposal())));
    const second = await makePlot(society, '1b', [grower(2).memberId]);
    const bed = await makeBed(society, second);
    const apart = { ...halves(grower(2), trialId), second: `${bed.id}:whole` };
    expect(await refusedWith(joinTrial.run(callerOf(2), apart))).toEqual(['trial-other-plot']);
  });
});

describe('the lot', () => {
  it('is drawn once, however many draw at once, and can be drawn again by anybody', async () => {
    const trialId = await joinedTrial(society.secretary.id, growers);
    const sealed = await db().trial.findUniqueOrThrow({ where: { id: trialId } });
    const read = () => readTrial.run(callerOf(0), { trialId });
    const [first, ...others] = await Promise.all([read(), drawTrials().then(read), drawTrials().then(read), read()]);
    for (const one of others) expect(one?.lot).toEqual(first?.lot);
    expect(first?.state).toBe('running');
    const { text, bytesHex, commitment } = first?.trial.lot ?? raise();
    const sha = (data: Buffer | string) => createHash('sha256').update(data).digest('hex');
    const bytes = Buffer.from(bytesHex ?? '', 'hex');
    expect([sha(bytes), sealed.lotCommitment]).toEqual([commitment, commitment]);
    const seed = sha(Buffer.concat([bytes, Buffer.from(text ?? '', 'utf8')]));
    const [head, ...lines] = (text ?? '').trimEnd().split('\n');
    expect(head).toBe(trialId);
    const byHand = lines
      .map((line) => line.split(':'))
      .map(([id = '', one, other]) => ({ id, draw: sha(`${seed}:${id}`), one, other }))
      .sort((a, b) => (a.draw < b.draw ? -1 : 1));
    expect(first?.lot?.rows.map(({ id, rank }) => ({ id, draw: rank }))).toEqual(
      byHand.map(({ id, draw }) => ({ id, draw })),
    );
    for (const { draw, one, other } of byHand) {
      const [a, b] = '02468ace'.includes(draw.slice(-1)) ? [one, other] : [other, one];
      const laid = await db().trialGround.findMany({ where: { id: { in: [a ?? '', b ?? ''] } } });
      expect(new Map(laid.map(({ id, treatment }) => [id, treatment]))).toEqual(
        new Map([
          [a, 'A'],
          [b, 'B'],
        ]),
      );
    }
    const audits = await db().auditRow.findMany({ where: { thingId: trialId, verb: 'laid out' } });
    expect(audits.map(({ actorMemberId, after }) => [actorMemberId, after])).toEqual([[null, { seed, blocks: 4 }]]);
  });

  it('is not drawn where too few have joined: it is over, and no ground gets anything', async () => {
    const trialId = await joinedTrial(society.secretary.id, growers, { leastPlots: 5 });
    const { state, lot } = await readTrial.run(callerOf(0), { trialId });
    expect([state, lot]).toEqual(['too-few', null]);
    expect(await db().trialGround.count({ where: { block: { trialId }, treatment: { not: null } } })).toBe(0);
  });
});

describe('the database refuses', () => {
  it('to change what was asked once joining is open', async () => {
    const { trialId: id } = await done(proposeTrial.run(callerOf(3), once(proposal())));
    for (const data of [
      { question: 'Another?' },
      { treatmentA: 'more' },
      { resultsByOn: new Date('2199-01-01') },
      { leastPlots: 9 },
      { lotBytesHex: '0'.repeat(64) },
      { lotCommitment: '0'.repeat(64) },
    ])
      await guard('trial_fixed', db().trial.update({ where: { id }, data }));
    await guard('trial_fixed', db().trial.delete({ where: { id } }));
  });

  it('anybody who joins after closing', async () => {
    const late = await joinedTrial(society.secretary.id, growers.slice(0, 3));
    await guard('trial_joining', joinHalves(late, grower(3), new Date()));
    await drawTrials();
    await guard('trial_joining', joinHalves(late, grower(3), new Date(Date.now() - 10 * 86_400_000)));
    expect(await refusedWith(joinTrial.run(callerOf(3), halves(grower(3), late)))).toEqual(['trial-joining-closed']);
  });

  it('a second block of one plot, and a layout that changes', async () => {
    const { trialId: open } = await done(proposeTrial.run(callerOf(3), once(proposal())));
    await joinHalves(open, grower(0), new Date());
    await guard('trial_block_once', joinHalves(open, { ...grower(0), bedId: grower(0).secondBedId }, new Date()));
    const trialId = await drawn();
    const [ground] = (await own(0, trialId)).grounds;
    const where = { id: ground?.id ?? '' };
    const treatment = ground?.treatment === 'A' ? 'B' : 'A';
    await guard('trial_layout_fixed', db().trialGround.update({ where, data: { treatment } }));
    await guard('trial_layout_fixed', db().trialGround.update({ where, data: { xCm: 1 } }));
    await guard('trial_layout_fixed', db().trialGround.delete({ where }));
    await guard('trial_fixed', db().trial.update({ where: { id: trialId }, data: { laidOutAt: new Date() } }));
    const block = { id: (await own(0, trialId)).id };
    await guard('trial_block_fixed', db().trialBlock.update({ where: block, data: { plotId: grower(1).plotId } }));
  });

  it('results before the lot, after the last day, and any that change', async () => {
    const { trialId: open } = await done(proposeTrial.run(callerOf(3), once(proposal())));
    await joinHalves(open, grower(2), new Date());
    const early = await db().trialGround.findFirstOrThrow({ where: { block: { trialId: open } } });
    const result = { societyId: society.id, source: 'typed', amount: 1, areaCm2: 1, byMemberId: grower(2).memberId };
    const put = (groundId: string, at = new Date()) => db().trialResult.create({ data: { ...result, groundId, at } });
    await guard('trial_results_open', put(early.id));
    const trialId = await drawn();
    const [ground] = (await own(2, trialId)).grounds;
    await guard('trial_results_open', put(ground?.id ?? '', new Date(Date.now() + 60 * 86_400_000)));
    const { id } = await put(ground?.id ?? '');
    await guard('written_once', db().trialResult.update({ where: { id }, data: { amount: 2 } }));
    await guard('written_once', db().trialResult.delete({ where: { id } }));
  });
});

describe('results', () => {
  it('are their grower’s alone until all are in; then they are everybody’s, and change no more', async () => {
    const trialId = await drawn();
    const report = (nth: number) => readTrialReport.run(callerOf(nth), { trialId });
    const amounts = [
      [30, 24],
      [50, 41],
      [40, 37],
    ];
    for (const [nth, pair] of amounts.entries()) {
      for (const { id, treatment } of (await own(nth, trialId)).grounds)
        await done(give(nth, id, `${pair[treatment === 'A' ? 0 : 1]} kg`));
      expect((await report(nth)).report).toBeNull();
    }
    const [one, other] = (await own(3, trialId)).grounds;
    await done(give(3, one?.id ?? '', '7 kg'));
    await done(give(3, one?.id ?? '', '8 kg'));
    const kept = (await own(3, trialId)).grounds[0];
    expect([kept?.result?.amount, kept?.earlier.map(({ amount }) => amount)]).toEqual([8000, [7000]]);
    expect(JSON.stringify(await readTrial.run(callerOf(0), { trialId }))).not.toContain('8000');
    await done(leaveTrial.run(callerOf(3), once({ blockId: (await own(3, trialId)).id, why: 'Slugs took it' })));
    // The others’ are all in: each of six square metres a half.
    const { state, report: told, blocks } = await report(3);
    expect(state).toBe('reported');
    expect(told).toMatchObject({ whole: 3, half: 0, none: 0, holders: 3 });
    expect(told?.told?.difference).toBeCloseTo(((6 + 9 + 3) / 3 / 6) * 1000, 6);
    expect(blocks.filter(({ dropped }) => dropped).map(({ dropped }) => dropped?.why)).toEqual(['Slugs took it']);
    expect(await refusedWith(give(0, (await own(0, trialId)).grounds[0]?.id ?? '', '99 kg'))).toEqual(['trial-over']);
    expect(await refusedWith(give(3, other?.id ?? '', '1 kg'))).toEqual(['trial-left-already']);
    expect(await refusedWith(callOffTrial.run(society.secretary.caller, once({ trialId, why: 'No' })))).toEqual([
      'trial-over',
    ]);
  });

  it('come from the harvests of the crop on that ground, as they were shown', async () => {
    const trialId = await drawn();
    const { grounds } = await own(1, trialId);
    const [first, second] = grounds;
    const { bedId } = grower(1);
    const part = { bedId, cropKey: 'leek', season: today.slice(0, 4), partFrom: '0 m', partLength: '1 m' };
    const { plantingId } = await done(recordPlanting.run(callerOf(1), once(part)));
    const lifted = { plantingId, measure: 'grams', onDay: today, quality: 'good' };
    expect(await refusedWith(give(1, first?.id ?? '', '5000', 'harvests'))).toEqual(['trial-no-harvests']);
    await done(logHarvest.run(callerOf(1), once({ ...lifted, amount: '3 kg' })));
    await done(logHarvest.run(callerOf(1), once({ ...lifted, amount: '2 kg' })));
    const shown = (await own(1, trialId)).grounds;
    expect(shown.map(({ onRecord }) => onRecord)).toEqual([
      { is: 'found', amount: 5000, areaCm2: 60_000, harvests: 2 },
      { is: 'none' },
    ]);
    expect(await refusedWith(give(1, first?.id ?? '', '3000', 'harvests'))).toEqual(['trial-records-changed']);
    await done(give(1, first?.id ?? '', '5000', 'harvests'));
    expect((await own(1, trialId)).grounds[0]?.result).toMatchObject({ source: 'harvests', amount: 5000 });
    expect(await refusedWith(give(1, second?.id ?? '', '5000', 'harvests'))).toEqual(['trial-no-harvests']);
    const larger = once({ groundId: second?.id ?? '', source: 'typed', amount: '1', area: '7', sure: 'yes' });
    expect(await refusedWith(giveResult.run(callerOf(1), larger))).toEqual(['trial-ground-larger']);
  });

  it('of two holders are withheld', async () => {
    const trialId = await drawn({ resultsByOn: addDays(today, 30) });
    for (const nth of [2, 3]) {
      const { id } = await own(nth, trialId);
      expect(await refusedWith(leaveTrial.run(callerOf(nth), once({ blockId: id })))).toEqual(['trial-why-left']);
      await done(leaveTrial.run(callerOf(nth), once({ blockId: id, why: 'Moved' })));
    }
    for (const nth of [0, 1]) for (const { id } of (await own(nth, trialId)).grounds) await done(give(nth, id, '5 kg'));
    const { state, report } = await readTrialReport.run(callerOf(2), { trialId });
    expect([state, report]).toEqual(['reported', { whole: 2, half: 0, none: 0, holders: 2, told: null }]);
  });
});

describe('the week', () => {
  it('says what to do where, asks for what is missing, and has the days', async () => {
    const question = randomUUID();
    const trialId = await drawn({ question, resultsByOn: addDays(today, 20) });
    const context = async (): Promise<ReadContext> => ({
      db: db(),
      scope: await openScopeOfMember(db(), grower(0).memberId),
      now: now(),
      today,
    });
    const due = async () => {
      const holdings = await ownHoldings(await context());
      return (await dueOfMember(await context(), holdings)).filter(
        (one) => 'trialId' in one && one.trialId === trialId,
      );
    };
    const block = await own(0, trialId);
    const a = block.grounds.find(({ treatment }) => treatment === 'A');
    expect(await due()).toMatchObject([
      { code: 'trial-treat', question, a: `1:${a?.piece}` },
      { code: 'trial-result', missing: 2, daysLeft: 20 },
    ]);
    await done(treatBlock.run(callerOf(0), once({ blockId: block.id, treatedOn: today })));
    await done(give(0, block.grounds[0]?.id ?? '', '1 kg'));
    expect(await due()).toMatchObject([{ code: 'trial-result', missing: 1 }]);
    const dates = await datesOfMember(await context(), await ownHoldings(await context()));
    expect(dates.filter(({ facts }) => facts.trialId === trialId).map(({ code, from }) => [code, from])).toEqual([
      ['trial-results-due', addDays(today, 20)],
    ]);
    await done(callOffTrial.run(society.secretary.caller, once({ trialId, why: 'Flooded' })));
    expect(await due()).toEqual([]);
    const { trials } = await readTrials.run(callerOf(0), {});
    expect(trials.find(({ id }) => id === trialId)).toMatchObject({ state: 'called-off' });
  });
});
