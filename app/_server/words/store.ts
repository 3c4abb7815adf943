import type { StoreRefusal } from '@/lib/usecases/refusals/store';
import type { Words } from './shape';

export const storeWords: Words<StoreRefusal> = {
  'no-temperature': () =>
    'Give how cold it gets there in degrees, such as 4 or −2, from −50 to 50. Or leave it empty if nobody knows.',
  'place-in-use': ({ lots }) =>
    `${lots} ${lots === 1 ? 'lot stands' : 'lots stand'} there still. Move ${lots === 1 ? 'it' : 'them'} to another place first.`,
  'no-such-keeping': () => 'Choose what it is from the list.',
  'lot-amount-wrong': ({ measure }) =>
    measure === 'pieces'
      ? 'Give how many pieces, as a whole number from 1 to 100,000.'
      : 'Give a weight above nothing, such as 12.5 kg or 28 lb, up to 10 tonnes.',
  'piece-weight-wrong': () => 'Give what one weighs, such as 120 g or 4 oz, up to 100 kg. Or leave it empty.',
  'put-in-in-future': () => 'That day is still to come. Give today, or a day that is past.',
  'put-in-long-ago': () => 'That is more than ten years ago. Give a later day.',
  'laid-out-in-future': () => 'That day is still to come. Give the day on which it was laid out, or leave it empty.',
  'cured-before-laid-out': ({ on }) => `It was laid out to cure on ${on}. Give that day or a later one.`,
  'not-laid-out': () => 'It is not on record that this lot was laid out to cure. Correct the lot first.',
  'already-cured': () => 'Its curing was said to be done already. Open the page afresh.',
  'cured-in-future': () => 'That day is still to come. Give today, or a day that is past.',
  'gone-over-already': ({ count }) =>
    `It has been gone over ${count === 1 ? 'once' : `${count} times`}, so what it is, how it is measured, how much was put in and the day stand. Undo the goings over first.`,
  'lot-used-up': () => 'Nothing is left of this lot. If that is wrong, undo its last going over.',
  'gone-over-meanwhile': ({ there }) =>
    `Somebody went over this lot while the page was open: ${there} left now. Open the page afresh, look again, and send what you found.`,
  'gone-over-in-future': () => 'That day is still to come. Give today, or a day that is past.',
  'gone-over-before': ({ last }) => `It was put in or last gone over on ${last}. Give that day or a later one.`,
  'found-wrong': ({ measure }) =>
    measure === 'pieces'
      ? 'Give how many pieces, as a whole number, or leave it empty.'
      : 'Give a weight, such as 1.5 kg or 3 lb, or leave it empty.',
  'more-used-than-there': ({ there }) => `Only ${there} were there. Give that or less.`,
  'more-bad-than-left': ({ left }) => `Besides what was used, only ${left} were there. Give that or less.`,
  'more-sound-than-left': ({ left }) =>
    `With what was used and what was bad, at most ${left} can be left. Give that or less, or leave it empty.`,
  'sound-does-not-add-up': ({ left }) => `What was used and what was bad leave ${left}. Give that, or leave it empty.`,
  'gone-over-since': ({ count }) =>
    `It has been gone over ${count === 1 ? 'once' : `${count} times`} since. Undo that first, or tick that those after it go too.`,
  'use-wrong': () =>
    'Give how many pieces you use a week, such as 5 or 2.5, or a weight, such as 1.5 kg; up to 10,000 pieces. Or leave it empty.',
  'no-day-of-year': () => 'Give a day of the year, such as 20 July. Or leave it empty.',
};
