import { figure, type Section } from './table';

export type Measured = {
  readonly size: number;
  readonly ms: number;
  readonly besideMs: number;
  readonly heapMb: number;
};

/** The middle of seven runs of each, turn by turn, so that both see the same machine. */
export function sideBySide(size: number, work: () => unknown, beside: () => unknown): Measured {
  const [ours, theirs]: [number[], number[]] = [[], []];
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  let most = before;
  for (let turn = 0; turn < 7; turn++) {
    ours.push(timed(work));
    most = Math.max(most, process.memoryUsage().heapUsed);
    theirs.push(timed(beside));
  }
  return { size, ms: middle(ours), besideMs: middle(theirs), heapMb: (most - before) / 1e6 };
}

function timed(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** The section of one measurement over growing sizes. */
export function growing(title: string, beside: string, unit: string, rows: readonly Measured[]): Section {
  return {
    title,
    heads: [unit, 'ms', `times ${beside}`, 'growth', 'heap, MB'],
    rows: rows.map(({ size, ms, besideMs, heapMb }, at) => {
      const before = rows[at - 1];
      const growth = before ? `${figure(ms / before.ms, 1)} for ${figure(size / before.size)} times the size` : '';
      return [figure(size), figure(ms, 1), figure(ms / besideMs, 1), growth, figure(heapMb)];
    }),
  };
}
