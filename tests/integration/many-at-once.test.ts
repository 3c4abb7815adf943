import { describe, expect, it } from 'vitest';
import { makeBusyDay, workOf } from '../fixtures/busy-day';
import { acknowledged, expectKept, expectSound, expectWhole, inTheMiddle } from '../fixtures/never-wrong';
import { answered, startWorker } from '../fixtures/process';

// Far beyond what it takes: a hang is to end, and nothing is timed.
describe('two app processes on one database', { timeout: 300_000 }, () => {
  it('take 200 bookings, each sent by both, while they confirm, collect and settle', async () => {
    const day = await makeBusyDay(200);
    const halves = workOf(day);
    const bookings = halves.map((half) => half.filter(({ operation }) => operation === 'book'));
    expect(bookings.map(({ length }) => length)).toEqual([100, 100]);
    const workers = [startWorker(), startWorker()];
    // A hundred bookings from each; behind its own, each sends those of the other too.
    const both = await Promise.all(
      workers.map((worker, nth) => answered(worker, [...(halves[nth] ?? []), ...(bookings[1 - nth] ?? [])])),
    );
    for (const answers of both)
      expect(acknowledged(answers).filter(({ operation }) => operation === 'book')).toHaveLength(200);
    await expectWhole(day, new Map(both.flatMap((answers) => [...answers])));
  });

  it('lose nothing that was acknowledged when one of them is killed in the middle, twice', async () => {
    const day = await makeBusyDay(100);
    const [mine, others] = workOf(day);
    const [first, second, survivor] = [startWorker(), startWorker(), startWorker()];

    // At its very first word, when the share-out may be half confirmed.
    const begun = first.give(mine);
    await begun.reaches(() => acknowledged(begun.answers).length > 0);
    await first.kill();
    expect(begun.answers.size).toBeLessThan(mine.length);
    await expectSound(day);
    await expectKept(day, begun.answers);

    // And in the thick of it, beside another that works on.
    const [cutOff, beside] = [second.give(mine), survivor.give(others)];
    await cutOff.reaches(() => inTheMiddle(cutOff.answers, beside.answers));
    await second.kill();
    expect(cutOff.answers.size).toBeLessThan(mine.length);
    await beside.over;
    await expectSound(day);
    for (const { answers } of [begun, cutOff, beside]) await expectKept(day, answers);

    await expectWhole(day, await answered(survivor, [...mine, ...others]));
  });
});
