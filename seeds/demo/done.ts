import type { Outcome } from '@/lib/usecases/refusal';

/** What an operation replied; the demo is not loaded where it refused. */
export async function done<T>(outcome: Promise<Outcome<T>>): Promise<T> {
  const result = await outcome;
  if (!result.ok) throw new Error(`the demo was refused: ${JSON.stringify(result.refusals)}`);
  return result.value;
}
