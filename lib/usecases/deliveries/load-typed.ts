import 'server-only';
import { baleOf } from '@/lib/domain/catalogue/bales';
import { materialOf } from '@/lib/domain/catalogue/materials';
import type { AmountUnit } from '@/lib/domain/quantity/load';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import { refuse } from '../refusal';
import { checkDensity } from './check-density';

type Typed = {
  readonly materialKey: string;
  readonly amount: number;
  readonly amountUnit: AmountUnit;
  readonly densityGPerL: number;
  readonly bale: string | null;
  readonly baleKg: number | null;
};

/** What one load is, from what was typed: bales are of straw, come whole, and each weighs what its kind does or was said. */
export function loadTyped<T extends Typed>(
  typed: T,
): Omit<T, 'bale' | 'baleKg'> & { loadUnit: LoadUnit; baleMassG: number | null } {
  const { bale, baleKg, ...rest } = typed;
  checkDensity(
    typed.materialKey,
    typed.amountUnit === 'bales' ? usualDensity(typed) : typed.densityGPerL,
    'densityGPerL',
  );
  if (typed.amountUnit !== 'bales') return { ...rest, loadUnit: 'barrow', baleMassG: null };
  if (typed.materialKey !== 'straw') refuse('bales-of-straw', { field: 'amountUnit' });
  if (typed.amount % 1000 !== 0) refuse('whole-bales', { field: 'amount' });
  // What was said of these very bales, before what is usual.
  const baleMassG = baleKg === null ? (baleOf(bale ?? '')?.massG ?? null) : baleKg * 1000;
  if (baleMassG === null) refuse('bale-weighs', { field: 'baleKg' });
  return { ...rest, densityGPerL: usualDensity(typed), loadUnit: 'bale', baleMassG };
}

// By the bale nobody asks what a litre of it weighs; the row keeps the usual.
function usualDensity({ materialKey, densityGPerL }: Typed): number {
  return materialOf(materialKey)?.densityGPerL ?? densityGPerL;
}
