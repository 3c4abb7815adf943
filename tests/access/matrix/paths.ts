import { tipAt } from '@/lib/usecases/deliveries/tip-at';
import { addDropPoint, changeDropPoint, retireDropPoint } from '@/lib/usecases/site/keep-drop-points';
import { addPath, changePath, retirePath } from '@/lib/usecases/site/keep-paths';
import { readHeapPlacing } from '@/lib/usecases/site/read-heap-placing';
import { listDropPoints, readDropPoint, readPath, readPaths } from '@/lib/usecases/site/read-paths';
import { once } from '../../fixtures/society';
import { everybody, type Row, secretary } from '../row';

const line = { points: '0, 0\n9, 0', lorry: 'whole' };
const place = { name: 'n', east: '1', south: '1' };

export const paths: readonly Row[] = [
  { operation: readHeapPlacing, input: ({ siteId, openId }) => ({ siteId, loads: openId }), allow: everybody },
  { operation: readPaths, input: ({ siteId }) => ({ siteId }), allow: secretary },
  { operation: readPath, input: ({ pathId }) => ({ pathId }), allow: secretary },
  { operation: listDropPoints, input: () => ({}), allow: secretary },
  { operation: readDropPoint, input: ({ dropPointId }) => ({ dropPointId }), allow: secretary },
  { operation: addPath, input: ({ siteId }) => once({ siteId, ...line }), allow: secretary },
  { operation: changePath, input: ({ pathId }) => once({ pathId, ...line }), allow: secretary },
  { operation: retirePath, input: ({ pathId }) => once({ pathId, sure: 'yes' }), allow: secretary },
  {
    operation: addDropPoint,
    input: ({ siteId, openId }) => once({ siteId, deliveryId: openId, ...place }),
    allow: secretary,
  },
  { operation: changeDropPoint, input: ({ dropPointId }) => once({ dropPointId, ...place }), allow: secretary },
  { operation: retireDropPoint, input: ({ dropPointId }) => once({ dropPointId, sure: 'yes' }), allow: secretary },
  {
    operation: tipAt,
    input: ({ openId, dropPointId }) => once({ deliveryId: openId, dropPointId }),
    allow: secretary,
  },
];
