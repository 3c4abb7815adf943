import Link from 'next/link';
import { amountWords } from '@/app/_ui/yield-words';
import { keepingsOfCrop } from '@/lib/domain/catalogue/keepings';
import type { Units } from '@/lib/domain/quantity/length';
import { cropWords, type ShownHarvest } from './harvest-list';

/** What was just logged, and what can be done with it next. */
export function Logged({ society, harvest, units }: { society: string; harvest: ShownHarvest; units: Units }) {
  const keeps = harvest.amount > 0 && keepingsOfCrop(harvest.cropKey).length > 0;
  return (
    <div className="notice kept wide" role="status">
      <p>
        Logged: {amountWords(harvest.measure, harvest.amount, units)}, {cropWords(harvest)}, bed {harvest.bedName}.
      </p>
      <div className="actions">
        {keeps ? (
          <Link className="button first" href={`/${society}/store/lots/new?harvest=${harvest.id}`}>
            Put it in store
          </Link>
        ) : null}
        {harvest.isTakenBack ? null : (
          <Link className="button" href={`/${society}/ground/harvests/new?planting=${harvest.plantingId}`}>
            Log more of it
          </Link>
        )}
      </div>
    </div>
  );
}
