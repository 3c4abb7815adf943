import 'server-only';
import { numbersTaken } from '@/lib/data/plot-store';
import type { WriteContext } from '../operation';
import { refuse } from '../refusal';

/** Refuse numbers that other plots of the site bear, each beside its field. */
export async function refuseTaken(
  { tx, scope }: Pick<WriteContext, 'tx' | 'scope'>,
  siteId: string,
  named: readonly (readonly [string, string])[],
  except: readonly string[] = [],
): Promise<void> {
  const taken = (
    await numbersTaken(
      tx,
      scope,
      siteId,
      named.map(([, number]) => number),
    )
  ).map((number) => number.toLowerCase());
  for (const [field, number] of named)
    if (taken.includes(number.toLowerCase()) && !except.some((one) => one.toLowerCase() === number.toLowerCase()))
      refuse('plot-number-taken', { field, numbers: { number } });
}
