import 'server-only';
import { fork } from 'node:child_process';
import path from 'node:path';
import type { Programme, Solution, Term } from '@/lib/domain/programme/programme';

export type SolverProgress = { readonly best: number | null; readonly bound: number | null };
export type Solver = {
  /** Minimise the objective; it works at one question at a time. */
  readonly solve: (
    programme: Programme,
    objective: readonly Term[],
    options: { readonly seconds: number; readonly onProgress?: (progress: SolverProgress) => void },
  ) => Promise<Solved>;
  /** Stop at once, whatever it is at; what waits fails with `SolverStopped`. */
  readonly stop: () => Promise<void>;
};

/** A solution, and what it took. */
export type Solved = Solution & { readonly memoryBytes: number };

/** The solver was stopped before it had an answer. */
export class SolverStopped extends Error {}

type Answer = Solved & { id: number; progress?: SolverProgress; failed?: string };

/** A solver in a process of its own, so that solving never holds up a request. Stop it when done. */
export function startSolver(): Solver {
  // A plain file beside this one, outside the bundle: the path is worked out when it runs.
  const file = path.join(process.cwd(), 'lib', 'platform', 'solver-process.mjs');
  // Infinity stands in the bounds, which JSON would lose; and none of the flags of the service are the solver's.
  const solver = fork(/* turbopackIgnore: true */ file, [], {
    serialization: 'advanced',
    execArgv: [],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  type Waiting = {
    resolve: (solution: Solved) => void;
    reject: (error: Error) => void;
    onProgress: (progress: SolverProgress) => void;
  };
  const waiting = new Map<number, Waiting>();
  const failAll = (error: Error) => {
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  solver.on('message', (message) => {
    const { id, progress, failed, ...solution } = message as Answer;
    const asked = waiting.get(id);
    if (progress) return asked?.onProgress(progress);
    waiting.delete(id);
    if (failed) asked?.reject(new Error(`the solver failed: ${failed}`));
    else asked?.resolve(solution);
  });
  solver.on('error', failAll);
  solver.on('exit', () => failAll(new SolverStopped('the solver was stopped')));
  let next = 0;
  return {
    solve: (programme, objective, { seconds, onProgress = () => {} }) =>
      new Promise((resolve, reject) => {
        const id = next++;
        waiting.set(id, { resolve, reject, onProgress });
        solver.send({ id, programme, objective, seconds });
      }),
    stop: () =>
      new Promise((resolve) => {
        if (solver.exitCode !== null || solver.signalCode !== null) return resolve();
        solver.once('exit', () => resolve());
        solver.kill('SIGKILL');
      }),
  };
}
