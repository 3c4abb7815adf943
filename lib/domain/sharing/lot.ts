import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js';

/** A booking as the lot sees it: what closing froze. */
export type LotBooking = {
  readonly id: string;
  readonly asked: number;
  readonly need: number;
  readonly creditMillionths: number;
};

/**
 * What is published when a delivery opens: the SHA-256 of bytes that nobody is shown yet.
 *
 * @param bytesHex  32 bytes in lower-case hexadecimal
 * @returns         64 lower-case hexadecimal digits
 * @throws RangeError when it is not 32 bytes
 * @source          FIPS 180-4, Secure Hash Standard, 2015
 */
export function commitmentOf(bytesHex: string): string {
  return bytesToHex(sha256(checkedBytes(bytesHex)));
}

/**
 * The bookings of a delivery as one text, always the same for the same bookings.
 *
 * Method: the delivery's id on the first line; then one line `id:asked:need:credit` for each booking, credit in whole
 * millionths of a load, lines sorted by id in order of code units; every line ended by a line feed; UTF-8.
 *
 * @throws RangeError on an id with a colon or a line feed in it, since two sets of bookings could then read the same
 * @example 'd1\na:6:4:0\nb:6:0:-500000\n'
 */
export function canonicalBookings(deliveryId: string, bookings: readonly LotBooking[]): string {
  for (const id of [deliveryId, ...bookings.map((booking) => booking.id)])
    if (/[:\n]/.test(id)) throw new RangeError(`an id may not hold a colon or a line feed: ${JSON.stringify(id)}`);
  const lines = [...bookings]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map(({ id, asked, need, creditMillionths }) => `${id}:${asked}:${need}:${creditMillionths}\n`);
  return `${deliveryId}\n${lines.join('')}`;
}

/**
 * The seed of a delivery's lot: SHA-256 of the secret bytes followed by the canonical text of the frozen bookings.
 *
 * Nobody can choose a booking to suit the lot, since the bytes are unknown while booking is open; nor the bytes to suit the
 * bookings, since their hash was published before. Whoever runs the server knows the bytes and could still cheat.
 *
 * @returns 64 lower-case hexadecimal digits
 * @throws RangeError when bytesHex is not 32 bytes, or as `canonicalBookings`
 */
export function lotSeed(given: {
  readonly bytesHex: string;
  readonly deliveryId: string;
  readonly bookings: readonly LotBooking[];
}): string {
  return seedOf(given.bytesHex, canonicalBookings(given.deliveryId, given.bookings));
}

/**
 * The seed of any lot: SHA-256 of its secret bytes followed by the text of what was frozen, in UTF-8.
 *
 * @returns 64 lower-case hexadecimal digits
 * @throws RangeError when bytesHex is not 32 bytes
 */
export function seedOf(bytesHex: string, text: string): string {
  return bytesToHex(sha256.create().update(checkedBytes(bytesHex)).update(utf8ToBytes(text)).digest());
}

/**
 * The ranks of a lot, one after another. The seed fills the hash's first block whatever the claim, so it is hashed once.
 *
 * @returns a function that gives a claim's rank, as `rankOf`
 */
export function ranksOf(seedHex: string): (id: string) => string {
  const begun = sha256.create().update(utf8ToBytes(`${seedHex}:`));
  return (id) => bytesToHex(begun.clone().update(utf8ToBytes(id)).digest());
}

/**
 * A claim's rank in the lot: SHA-256 of the text `seed:id`. Smallest comes first.
 *
 * @returns 64 lower-case hexadecimal digits, to be compared as text
 */
export function rankOf(seedHex: string, id: string): string {
  return ranksOf(seedHex)(id);
}

function checkedBytes(bytesHex: string): Uint8Array {
  if (!/^[0-9a-f]{64}$/.test(bytesHex))
    throw new RangeError('the lot is drawn from 32 bytes in lower-case hexadecimal');
  return hexToBytes(bytesHex);
}
