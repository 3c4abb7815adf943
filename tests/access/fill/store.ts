import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { goOverLot } from '@/lib/usecases/store/go-over-lot';
import { addPlace } from '@/lib/usecases/store/keep-places';
import { putIn } from '@/lib/usecases/store/put-in';
import { sayUse } from '@/lib/usecases/store/say-use';
import { done, once, type TestMember } from '../../fixtures/society';
import type { Ids } from '../row';
import type { Members, Word } from './members';

/** How many onions the holder has put in store: a figure that stands nowhere else. */
export const storedPieces = 87_351;

type Holdings = { readonly holdingId: string; readonly otherHoldingId: string };

/** A store for the holder and one for the neighbour: places, a lot that was gone over and is curing, and what they use. */
export async function makeStore(word: Word, { holder, neighbour }: Members, { holdingId, otherHoldingId }: Holdings) {
  await fill(neighbour, otherHoldingId, (what) => word(`neighbour ${what}`));
  return fill(holder, holdingId, (what) => word(`holder ${what}`));
}

type StoreIds = Pick<Ids, 'placeId' | 'sparePlaceId' | 'lotId' | 'goingOverId'>;

async function fill({ caller }: TestMember, holdingId: string, word: Word): Promise<StoreIds> {
  const putInOn = addDays(todayIn('Europe/London'), -20);
  const place = (name: string) => done(addPlace.run(caller, once({ holdingId, name, kind: 'shed', cold: '3' })));
  const { placeId } = await place(word('shed'));
  const { placeId: sparePlaceId } = await place(word('cellar'));
  const lot = {
    ...{ placeId, keepingKey: 'onion', measure: 'pieces', amount: String(storedPieces), putInOn, condition: 'sound' },
    ...{ variety: word('bulbs'), source: word('grown'), notes: word('lot remarks'), curingFrom: putInOn },
  };
  const { lotId } = await done(putIn.run(caller, once(lot)));
  const { goingOverId } = await done(goOverLot.run(caller, once({ lotId, used: '5', bad: '1', badWhy: 'mould' })));
  await done(sayUse.run(caller, once({ holdingId, keepingKey: 'onion', perWeek: '5', newCropFrom: '20 July' })));
  return { placeId, sparePlaceId, lotId, goingOverId };
}
