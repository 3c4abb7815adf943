import { describe, expect, it, vi } from 'vitest';
import { makeBusyDay, workOf } from '../fixtures/busy-day';
import { acknowledged, expectKept, expectSound, expectWhole } from '../fixtures/never-wrong';
import { startWorker } from '../fixtures/process';

describe('two app processes on one database', () => {
  it('take 200 bookings, each sent twice, while they confirm, collect and settle', async () => {
    const day = await makeBusyDay(200);
    const [one, other] = workOf(day);
    const books = [...one, ...other].filter(({ operation }) => operation === 'book');
    expect(books).toHaveLength(200);
    // A hundred bookings from each process; then each sends what the other was given too.
    const work = [startWorker().give([...one, ...other.filter((task) => books.includes(task))])];
    work.push(startWorker().give([...other, ...one.filter((task) => books.includes(task))]));
    await Promise.all(work.map(({ over }) => over));
    expect(work.map(({ answers }) => answers.size)).toEqual([one.length + 100, other.length + 100]);
    for (const { answers } of work)
      expect(acknowledged(answers).filter((task) => books.includes(task))).toEqual(expect.arrayContaining(books));
    await expectWhole(day, new Map(work.flatMap(({ answers }) => [...answers])));
  });
});
