import { todayIn } from '@/lib/platform/clock';
import { logHarvest, retireHarvest } from '@/lib/usecases/harvest/keep-harvests';
import { readHarvestForm, readHarvests } from '@/lib/usecases/harvest/read-harvests';
import { readHarvestsCsv, readYields } from '@/lib/usecases/harvest/read-yields';
import { once } from '../../fixtures/society';
import { everybody, holders, type Row } from '../row';

const picked = { measure: 'grams', amount: '2 kg', onDay: todayIn('Europe/London'), quality: 'good' };

export const harvest: readonly Row[] = [
  { operation: readHarvests, input: () => ({}), allow: everybody },
  { operation: readYields, input: () => ({}), allow: everybody },
  { operation: readHarvestsCsv, input: () => ({}), allow: everybody },
  {
    operation: readHarvestForm,
    input: ({ plantingId, harvestId }) => ({ planting: plantingId, replaces: harvestId }),
    allow: holders,
    isOwn: true,
  },
  { operation: logHarvest, input: ({ plantingId }) => once({ plantingId, ...picked }), allow: holders, isOwn: true },
  { operation: retireHarvest, input: ({ harvestId }) => once({ harvestId }), allow: holders, isOwn: true },
];
