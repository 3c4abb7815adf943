import { type ExportTable, never, own } from './export-table';

const mine = { column: 'holdingId', is: 'my holding' } as const;
const throughLot = { ...mine, through: { table: 'StoreLot', column: 'lotId' } } as const;

// What a household lifts, keeps and eats is nobody else's: the society's archive has none of it.
const ownRow = {
  id: own('number of the row; other files refer to it'),
  societyId: never('the same in every row: the society itself'),
} as const;
const ownHolding = { holdingId: own('whose it is') } as const;
const written = { byMemberId: own('who wrote it'), createdAt: own('when the row was written') } as const;
const retired = { retiredAt: own('when it was taken back or done with; empty while it stands') } as const;

/** What was lifted, where it is kept and how it fares. */
export const storeTables: readonly ExportTable[] = [
  {
    table: 'Harvest',
    file: 'harvests.csv',
    says: 'What was lifted or picked of a planting on a day.',
    columns: {
      ...ownRow,
      ...ownHolding,
      plantingId: own('plantings.csv'),
      onDay: own('the day'),
      measure: own('grams or pieces'),
      amount: own('how many of them'),
      quality: own('how it was'),
      notes: own('notes'),
      ...written,
      ...retired,
    },
    owner: mine,
  },
  {
    table: 'StorePlace',
    file: 'store-places.csv',
    says: 'Where it is kept.',
    columns: {
      ...ownRow,
      ...ownHolding,
      name: own('its name'),
      kind: own('shed, clamp, string, frame, room, cellar or other'),
      tenthC: own('how cold it gets there [tenths of °C]; empty where nobody knows'),
      createdAt: own('when the row was written'),
      ...retired,
    },
    owner: mine,
  },
  {
    table: 'StoreLot',
    file: 'store-lots.csv',
    says: 'What was put in store.',
    columns: {
      ...ownRow,
      ...ownHolding,
      placeId: own('store-places.csv'),
      harvestId: own('harvests.csv; empty where it came from elsewhere'),
      keepingKey: own('what it is'),
      variety: own('which'),
      source: own('where it came from, in words'),
      measure: own('grams or pieces'),
      putIn: own('how many of them'),
      pieceG: own('what one weighs [g]; empty: as its kind'),
      putInOn: own('the day it was put in'),
      condition: own('sound, damaged, uncured or unripe'),
      goingOverDays: own('how often it is gone over [days]; empty: as its kind'),
      curingFrom: own('the day it was laid out to cure'),
      curedOn: own('the day its curing was done'),
      notes: own('notes'),
      ...written,
      ...retired,
    },
    owner: mine,
  },
  {
    table: 'GoingOver',
    file: 'goings-over.csv',
    says: 'What was found when a lot was gone over, in its own measure.',
    columns: {
      ...ownRow,
      lotId: own('store-lots.csv'),
      onDay: own('the day'),
      used: own('used since the last time'),
      bad: own('taken out bad'),
      badWhy: own('why'),
      sound: own('sound, and left'),
      byMemberId: own('who went over it'),
      at: own('when it was written'),
      undoneAt: own('when it was taken back; empty while it stands'),
    },
    owner: throughLot,
  },
  {
    table: 'HouseholdUse',
    file: 'household-use.csv',
    says: 'What the household says that it uses. The newest row of a kind holds.',
    columns: {
      ...ownRow,
      ...ownHolding,
      keepingKey: own('what'),
      tenthsPerWeek: own('tenths of a piece a week'),
      newCropFrom: own('when the new crop is looked for, as month and day'),
      byMemberId: own('who said it'),
      setAt: own('when'),
    },
    owner: mine,
  },
];
