import 'server-only';
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Programme, Solution, Term } from '@/lib/domain/programme/programme';

export type SolverProgress = { readonly best: number | null; readonly bound: number | null };
export type Solver = {
  /** Minimise the objective; the thread works at one question at a time. */
  readonly solve: (
    programme: Programme,
    objective: readonly Term[],
    options: { readonly seconds: number; readonly onProgress?: (progress: SolverProgress) => void },
  ) => Promise<Solution>;
  /** Stop at once, whatever it is at; what waits fails with `SolverStopped`. */
  readonly stop: () => Promise<void>;
};

/** The solver was stopped before it had an answer. */
export class SolverStopped extends Error {}

type Answer = Solution & { id: number; progress?: SolverProgress; failed?: string };

/** A solver in a thread of its own, so that solving never holds up a request. Stop it when done. */
export function startSolver(): Solver {
  // A plain file beside this one, outside the bundle: the path is worked out when it runs.
  const worker = new Worker(path.join(process.cwd(), 'lib', 'platform', 'solver-worker.mjs'), { stdout: true });
  type Waiting = {
    resolve: (solution: Solution) => void;
    reject: (error: Error) => void;
    onProgress: (progress: SolverProgress) => void;
  };
  const waiting = new Map<number, Waiting>();
  const failAll = (error: Error) => {
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  worker.on('message', ({ id, progress, failed, ...solution }: Answer) => {
    const asked = waiting.get(id);
    if (progress) return asked?.onProgress(progress);
    waiting.delete(id);
    if (failed) asked?.reject(new Error(`the solver failed: ${failed}`));
    else asked?.resolve(solution);
  });
  worker.on('error', failAll);
  worker.on('exit', () => failAll(new SolverStopped('the solver was stopped')));
  let next = 0;
  return {
    solve: (programme, objective, { seconds, onProgress = () => {} }) =>
      new Promise((resolve, reject) => {
        const id = next++;
        waiting.set(id, { resolve, reject, onProgress });
        worker.postMessage({ id, programme, objective, seconds });
      }),
    stop: async () => {
      await worker.terminate();
    },
  };
}
