import { randomUUID } from 'node:crypto';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Caller } from '@/lib/usecases/operation';
import { goOverLot } from '@/lib/usecases/store/go-over-lot';
import { addPlace } from '@/lib/usecases/store/keep-places';
import { putIn } from '@/lib/usecases/store/put-in';
import { readPlaces } from '@/lib/usecases/store/read-places';
import { sayUse } from '@/lib/usecases/store/say-use';
import { done } from './done';

type Going = readonly [daysAgo: number, used: string, bad: string, why?: string];

type Lot = {
  readonly place: keyof typeof places;
  readonly daysAgo: number;
  readonly facts: Readonly<Record<string, string>>;
  readonly goings: readonly Going[];
};

const places = {
  strings: { name: 'Strings by the shed door', kind: 'string', cold: '3' },
  shed: { name: 'Shed, the floor', kind: 'shed', cold: '2' },
  room: { name: 'Spare room', kind: 'room', cold: '12' },
} as const;

/** A winter's store on an ordinary day: one round missed, one due today, split squashes to be used first, apples beside potatoes. */
const lots: readonly Lot[] = [
  {
    place: 'strings',
    daysAgo: 84,
    facts: { keepingKey: 'onion', variety: 'Marl Globe', measure: 'pieces', amount: '90' },
    goings: [
      [70, '8', '1', 'mould'],
      [56, '9', ''],
      [42, '10', '1', 'mould'],
      [28, '9', '2', 'rot'],
    ],
  },
  {
    place: 'strings',
    daysAgo: 120,
    facts: { keepingKey: 'garlic', measure: 'pieces', amount: '60' },
    goings: [
      [90, '6', '1', 'shrivelled'],
      [60, '5', ''],
      [30, '6', '1', 'sprouted'],
    ],
  },
  {
    place: 'shed',
    daysAgo: 75,
    facts: { keepingKey: 'potato', variety: 'Reach Maincrop', measure: 'grams', amount: '34 kg' },
    goings: [
      [45, '7 kg', '400 g', 'rot'],
      [15, '8 kg', '300 g', 'rot'],
    ],
  },
  {
    place: 'shed',
    daysAgo: 42,
    facts: { keepingKey: 'apple', measure: 'grams', amount: '12 kg', source: 'the tree behind the tool shed' },
    goings: [
      [28, '2 kg', '300 g', 'rot'],
      [14, '2.5 kg', '450 g', 'rot'],
    ],
  },
  {
    place: 'room',
    daysAgo: 50,
    facts: { keepingKey: 'squash', variety: 'Withy Blue', measure: 'pieces', amount: '9', pieceWeight: '1400 g' },
    goings: [
      [36, '1', ''],
      [22, '1', ''],
      [8, '1', '1', 'rot'],
    ],
  },
  {
    place: 'room',
    daysAgo: 50,
    facts: { keepingKey: 'squash', variety: 'Withy Blue', measure: 'pieces', amount: '4', condition: 'damaged' },
    goings: [
      [36, '1', '1', 'rot'],
      [14, '1', ''],
    ],
  },
];

/** What a household put in store for the winter, and has gone over since. */
export async function loadStore(caller: Caller, today: CalendarDate): Promise<void> {
  const once = <Input extends object>(input: Input) => ({ writeId: randomUUID(), ...input });
  const [holding] = (await readPlaces.run(caller, {})).holdings;
  const holdingId = holding?.id ?? '';
  const placeIds = new Map<string, string>();
  for (const [key, facts] of Object.entries(places))
    placeIds.set(key, (await done(addPlace.run(caller, once({ holdingId, ...facts })))).placeId);
  for (const { place, daysAgo, facts, goings } of lots) {
    const at = { placeId: placeIds.get(place) ?? '', putInOn: addDays(today, -daysAgo), condition: 'sound' };
    const { lotId } = await done(putIn.run(caller, once({ ...at, ...facts })));
    for (const [ago, used, bad, badWhy = ''] of goings)
      await done(goOverLot.run(caller, once({ lotId, on: addDays(today, -ago), used, bad, badWhy })));
  }
  for (const said of [
    { keepingKey: 'onion', perWeek: '5', newCropFrom: '20 July' },
    { keepingKey: 'potato', perWeek: '1.8 kg', newCropFrom: '20 June' },
    { keepingKey: 'squash', perWeek: '0.5', newCropFrom: '15 September' },
  ])
    await done(sayUse.run(caller, once({ holdingId, ...said })));
}
