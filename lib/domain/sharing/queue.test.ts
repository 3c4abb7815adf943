import { expect, test } from 'vitest';
import { queueOf } from './queue';

const claims = [
  { id: 'low', asked: 2, need: 1, creditMillionths: -500_000 },
  { id: 'high', asked: 3, need: 2, creditMillionths: 500_000 },
];

test('needs round by round, then wants from the first round again', () =>
  expect(queueOf(claims, '5eed', 99)).toEqual([
    { position: 1, stage: 'needs', round: 1, id: 'high' },
    { position: 2, stage: 'needs', round: 1, id: 'low' },
    { position: 3, stage: 'needs', round: 2, id: 'high' },
    { position: 4, stage: 'wants', round: 1, id: 'high' },
    { position: 5, stage: 'wants', round: 1, id: 'low' },
  ]));

test('no further than it was asked to go, in the middle of a round too', () => {
  expect(queueOf(claims, '5eed', 4)).toEqual(queueOf(claims, '5eed', 99).slice(0, 4));
  expect(queueOf(claims, '5eed', 1)).toHaveLength(1);
  expect(queueOf(claims, '5eed', 0)).toEqual([]);
});

test('nobody asked', () => expect(queueOf([], '5eed', 9)).toEqual([]));

test('what was collected moves nobody', () =>
  expect(
    queueOf(
      claims.map((claim) => ({ ...claim, collected: 2 })),
      '5eed',
      99,
    ),
  ).toEqual(queueOf(claims, '5eed', 99)));

test.each([-1, 0.5, Number.NaN])('a length of %s is refused', (most) =>
  expect(() => queueOf(claims, '5eed', most)).toThrow(RangeError),
);
