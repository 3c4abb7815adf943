import { readKind } from '@/lib/usecases/store/read-kind';
import { readLasts } from '@/lib/usecases/store/read-lasts';
import { readLot } from '@/lib/usecases/store/read-lot';
import { readLotForm } from '@/lib/usecases/store/read-lot-form';
import { readPlaces } from '@/lib/usecases/store/read-places';
import { readRound } from '@/lib/usecases/store/read-round';
import { readStore } from '@/lib/usecases/store/read-store';
import { finishLot, goOverLot, undoGoingOver } from '@/lib/usecases/store/go-over-lot';
import { correctLot, cureLot, moveLot, takeBackLot } from '@/lib/usecases/store/keep-lots';
import { addPlace, changePlace, retirePlace } from '@/lib/usecases/store/keep-places';
import { putIn } from '@/lib/usecases/store/put-in';
import { sayUse } from '@/lib/usecases/store/say-use';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { once } from '../../fixtures/society';
import { storedPieces } from '../fill/store';
import { everybody, type Row } from '../row';

const own = { allow: ['holder'], isOwn: true } as const;
const place = { name: 'n', kind: 'clamp', cold: '' };
const putInOn = addDays(todayIn('Europe/London'), -20);
const lot = {
  ...{ keepingKey: 'onion', measure: 'pieces', amount: String(storedPieces), putInOn, condition: 'sound' },
  curingFrom: putInOn,
};

export const store: readonly Row[] = [
  { operation: readStore, input: () => ({}), allow: everybody },
  { operation: readRound, input: () => ({}), allow: everybody },
  { operation: readPlaces, input: () => ({}), allow: everybody },
  { operation: readLasts, input: () => ({}), allow: everybody },
  { operation: readLotForm, input: () => ({}), allow: everybody },
  { operation: readKind, input: ({ holdingId }) => ({ holdingId, keepingKey: 'onion' }), ...own },
  { operation: readLot, input: ({ lotId }) => ({ lotId }), ...own },
  { operation: addPlace, input: ({ holdingId }) => once({ holdingId, ...place }), ...own },
  { operation: changePlace, input: ({ placeId }) => once({ placeId, ...place }), ...own },
  { operation: retirePlace, input: ({ sparePlaceId }) => once({ placeId: sparePlaceId }), ...own },
  { operation: putIn, input: ({ placeId }) => once({ placeId, ...lot }), ...own },
  { operation: correctLot, input: ({ lotId }) => once({ lotId, ...lot, condition: 'unripe' }), ...own },
  { operation: moveLot, input: ({ lotId, sparePlaceId }) => once({ lotId, placeId: sparePlaceId }), ...own },
  { operation: cureLot, input: ({ lotId }) => once({ lotId, curedOn: addDays(putInOn, 15) }), ...own },
  { operation: takeBackLot, input: ({ lotId }) => once({ lotId, sure: 'yes' }), ...own },
  { operation: goOverLot, input: ({ lotId }) => once({ lotId, used: '2' }), ...own },
  { operation: finishLot, input: ({ lotId }) => once({ lotId, how: 'used' }), ...own },
  { operation: undoGoingOver, input: ({ goingOverId }) => once({ goingOverId }), ...own },
  {
    operation: sayUse,
    input: ({ holdingId }) => once({ holdingId, keepingKey: 'garlic', perWeek: '1', newCropFrom: '1 July' }),
    ...own,
  },
];
