import type { SeedRefusal } from '@/lib/usecases/refusals/seed';
import type { Words } from './shape';

const amounts: Readonly<Record<string, string>> = {
  seeds: 'Give whole seeds, such as 200',
  sets: 'Give whole sets, such as 25',
  milligrams: 'Give grams, such as 1.5',
};

const states: Readonly<Record<string, string>> = {
  planned: 'not opened yet',
  open: 'open',
  closed: 'closed',
  ordered: 'ordered',
  arrived: 'here',
  settled: 'settled',
  'called-off': 'called off',
};

export const seedWords: Words<SeedRefusal> = {
  'seed-amount': ({ unit = '', most, isWant }) =>
    `${amounts[unit] ?? 'Give a whole number'}, at most ${Number(most).toLocaleString('en-GB')}${isWant ? ', or leave it empty' : ''}.`,
  'seed-price': () => 'Give the price of one pack in pounds, such as 2.40.',
  'seed-not-weighed': () => 'Nobody has weighed the seed of this crop, so grams say nothing. Count the seeds.',
  'seed-is-planted': () => 'This crop is planted as sets, cloves or tubers, which are no seed for the tin.',
  'packed-in-the-future': ({ most }) =>
    `That year is still to come. Give ${most} or a year before it, or leave it empty.`,
  'packet-holds-less': ({ seeds }) =>
    `There ${seeds === 1 ? 'is one seed' : `are ${Number(seeds).toLocaleString('en-GB')} seeds`} left in it. Give that or fewer, or correct the packet.`,
  'both-distances': () => 'Give both distances, between the rows and in the row, or leave both empty.',
  'distance-wrong': ({ unit, mostM }) =>
    `Give a distance in ${unit === 'in' ? 'inches, such as 6 or 1 ½' : 'centimetres, such as 15'}; ${mostM} m at the most.`,
  'pack-missing': () => 'Give one pack at least: how much is in it, and what it costs.',
  'item-listed-already': () => 'This crop and variety is on the list already. Take it off first, or name another.',
  'item-not-listed': () => 'One of these is no longer on the list. Open the page afresh and look at what is.',
  'nothing-listed': () => 'There is nothing on the list yet. Add one thing at least, then open it.',
  'list-closed': ({ at }) => `The list closed at ${at}. Ask the secretary whether anything can still be changed.`,
  'order-not-now': ({ state = '' }) => `That cannot be done now: the order is ${states[state] ?? state}.`,
  'wants-too-much': () => 'With what others want that is more than one order can be worked out for. Give less.',
  'nobody-wants-any': () =>
    'Nobody wants anything of it, so there is nothing to order. Call it off, or give it longer.',
  'more-came': ({ ordered }) => `Give whole packs from 0 to ${ordered}: that many were ordered.`,
  'handed-out-already': () =>
    'Some of this was handed out, and would then be another amount. Take those ticks back first.',
  'nothing-to-hand-out': () => 'There is nothing of this order for that holding.',
  'nothing-for-the-tin': () => 'There is nothing of this order to put into the tin, or it is in it already.',
  'entry-of-seed-order': () =>
    'This entry is an order of seed, shared out. Put it right on the order’s page in the office; the shares are then worked out anew.',
};
