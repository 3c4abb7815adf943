import { cautionsFor } from '@/lib/domain/catalogue/cautions';
import { Caution } from './sheet';

/** What is said wherever stored food is gone over or used: mould, and green potatoes where there are any. It can't be switched off. */
export function StoreCaution({ keepingKeys }: { keepingKeys: readonly string[] }) {
  const works = keepingKeys.includes('potato') ? (['stored-potatoes'] as const) : (['stored-food'] as const);
  return (
    <Caution>
      {cautionsFor(works)
        .map(({ words }) => words)
        .join(' ')}
    </Caution>
  );
}
