import { describe, expect, test } from 'vitest';
import { canonicalBookings, commitmentOf, lotSeed, rankOf } from './lot';
import { shareOut } from './share-out';

const bytesHex = '00'.repeat(32);
const bookings = [
  { id: 'b', asked: 6, need: 0, creditMillionths: -500_000 },
  { id: 'a', asked: 6, need: 4, creditMillionths: 0 },
];

describe('the bookings as one text', () => {
  test('sorted by id, one line each', () =>
    expect(canonicalBookings('d1', bookings)).toBe('d1\na:6:4:0\nb:6:0:-500000\n'));
  test('ids sort by code units, not as a language would', () => {
    const line = (id: string) => ({ id, asked: 0, need: 0, creditMillionths: 0 });
    expect(canonicalBookings('d1', ['é', 'a', 'Z', '10', '9'].map(line))).toBe(
      'd1\n10:0:0:0\n9:0:0:0\nZ:0:0:0\na:0:0:0\né:0:0:0\n',
    );
  });
  test('no bookings', () => expect(canonicalBookings('d1', [])).toBe('d1\n'));
  test('the list given is left in its order', () => {
    canonicalBookings('d1', Object.freeze(bookings));
    expect(bookings.map(({ id }) => id)).toEqual(['b', 'a']);
  });
  test.each(['a:1', 'a\n'])('an id that could be read two ways is refused: %j', (id) => {
    expect(() => canonicalBookings(id, [])).toThrow(RangeError);
    expect(() => canonicalBookings('d1', [{ id, asked: 0, need: 0, creditMillionths: 0 }])).toThrow(RangeError);
  });
});

describe('the seed', () => {
  // Worked out with `sha256sum` from GNU coreutils on the bytes followed by the text above.
  test('is the hash of the bytes and the text', () =>
    expect(lotSeed({ bytesHex, deliveryId: 'd1', bookings })).toBe(
      '3e0dab68761e525539a9ec22bf86db20cbfbf4fe4e69d35cede6a4cd5b1afffc',
    ));
  test('changes with any byte, any booking, and the delivery', () => {
    const seeds = [
      lotSeed({ bytesHex, deliveryId: 'd1', bookings }),
      lotSeed({ bytesHex: `${'00'.repeat(31)}01`, deliveryId: 'd1', bookings }),
      lotSeed({ bytesHex, deliveryId: 'd2', bookings }),
      lotSeed({ bytesHex, deliveryId: 'd1', bookings: bookings.slice(1) }),
      lotSeed({ bytesHex, deliveryId: 'd1', bookings: bookings.map((booking) => ({ ...booking, asked: 7 })) }),
    ];
    expect(new Set(seeds).size).toBe(seeds.length);
  });
  test('does not change with the order of the bookings', () =>
    expect(lotSeed({ bytesHex, deliveryId: 'd1', bookings: bookings.toReversed() })).toBe(
      lotSeed({ bytesHex, deliveryId: 'd1', bookings }),
    ));
  test.each(['', '00', '00'.repeat(33), 'AB'.repeat(32), 'zz'.repeat(32), `${bytesHex}\n`])(
    'is refused for %j',
    (wrong) => {
      expect(() => lotSeed({ bytesHex: wrong, deliveryId: 'd1', bookings })).toThrow(RangeError);
      expect(() => commitmentOf(wrong)).toThrow(RangeError);
    },
  );
});

describe('a rank', () => {
  // Worked out with `printf '5eed:a' | sha256sum` and the like, in UTF-8.
  test.each([
    ['a', 'e08e6eb4be9b72f2a7c83b81a8db8cef7df7970350ad6a01261b42f9d73b3086'],
    ['zoë', '0492daef8983ffc288a394407ad3af0d42e39b2f9dd6a0431e532f4ec489ec15'],
  ])('of %s', (id, rank) => expect(rankOf('5eed', id)).toBe(rank));
  test('the smallest comes first', () => {
    const claims = ['a', 'zoë'].map((id) => ({ id, asked: 1, need: 1, creditMillionths: 0 }));
    const { lotOrder, shares } = shareOut({ loads: 1, claims, lotSeed: '5eed' });
    expect(lotOrder).toEqual(['zoë', 'a']);
    expect(shares.map(({ share }) => share)).toEqual([0, 1]);
  });
});
