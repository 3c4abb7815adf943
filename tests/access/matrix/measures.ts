import { setDensity } from '@/lib/usecases/deliveries/set-density';
import { keepMeasured } from '@/lib/usecases/measures/keep-measured';
import { readMeasures } from '@/lib/usecases/measures/read-measures';
import { once } from '../../fixtures/society';
import { everybody, type Row, secretary } from '../row';

const buckets = { bucket: '10 L', fill1: '4', fill2: '5' };

export const measures: readonly Row[] = [
  { operation: readMeasures, input: () => ({ what: 'bucket', typed: buckets }), allow: everybody },
  { operation: keepMeasured, input: () => once({ barrowLitres: '100' }), allow: everybody },
  { operation: setDensity, input: ({ plannedId }) => once({ deliveryId: plannedId, ...buckets }), allow: secretary },
];
