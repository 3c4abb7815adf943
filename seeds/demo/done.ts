import type { Outcome } from '@/lib/usecases/refusal';

/** What a use-case gave, or a loud end: the demo is never loaded by half. */
export async function done<T>(outcome: Promise<Outcome<T>>): Promise<T> {
  const result = await outcome;
  if (!result.ok) throw new Error(`the demo was refused: ${JSON.stringify(result.refusals)}`);
  return result.value;
}
