import type { Asked, Measure, readMeasures } from '@/lib/usecases/measures/read-measures';

/** What each part of the page is given: what was typed, and the answer or what is wrong beside its field. */
export type Tool<What extends Measure> = {
  readonly society: string;
  readonly read: Awaited<ReturnType<typeof readMeasures.run>>;
  readonly answer: Extract<Asked, { what: What }>['answer'];
  /** Null while nothing was asked. */
  readonly typed: Readonly<Record<string, string>> | null;
  readonly errors: Readonly<Record<string, string>>;
};
