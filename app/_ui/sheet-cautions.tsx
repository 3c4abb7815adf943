import { type CautionedWork, cautionsFor } from '@/lib/domain/catalogue/cautions';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { mealOf } from '@/lib/domain/catalogue/meals';
import { soilOf } from '@/lib/domain/catalogue/soils';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { sourceWords } from './setting-words';

/** What is done on a sheet, as far as it calls for caution. */
function cautionedWorks({ method, soil, manure, meal, strawGPerM2 }: SheetOrder): CautionedWork[] {
  const digs = diggingMethodOf(method).loosenedSpits > 0;
  const kind = materialOf(manure?.materialKey ?? '')?.kind;
  return [
    ...(digs ? (['digging', 'lifting'] as const) : []),
    ...(digs && soilOf(soil)?.key === 'clayey' ? (['heavy-soil'] as const) : []),
    ...(manure ? (['barrowing', 'lifting'] as const) : []),
    ...(kind === 'manure' || kind === 'compost' ? [kind] : []),
    ...(meal ? (['meal'] as const) : []),
    ...(mealOf(meal?.key ?? '')?.limes ? (['lime'] as const) : []),
    ...(strawGPerM2 > 0 ? (['straw'] as const) : []),
  ];
}

/** The cautions that belong to a sheet's work, the most pressing first. They can't be switched off. */
export function SheetCautions({ order }: { order: SheetOrder }) {
  return (
    <ul className="cautions">
      {cautionsFor(cautionedWorks(order)).map(({ key, words }) => (
        <li key={key}>{words}</li>
      ))}
    </ul>
  );
}

/** Who says so. */
export function CautionSources({ order }: { order: SheetOrder }) {
  const all = [...new Set(cautionsFor(cautionedWorks(order)).map(({ source }) => sourceWords(source)))];
  return <p className="small soft">{all.join('; ')}.</p>;
}

/** The most pressing of them, beside the work in hand. */
export function FirstCaution({ order }: { order: SheetOrder }) {
  const [first] = cautionsFor(cautionedWorks(order));
  return first ? (
    <p className="caution">
      <strong>Take care.</strong> {first.words}
    </p>
  ) : null;
}
