import type { ResidueRefusal } from '@/lib/usecases/refusals/residue';
import type { Words } from './shape';

export const residueWords: Words<ResidueRefusal> = {
  'sown-in-the-future': () => 'That day is still to come. Give the day on which it was sown, or leave it until then.',
  'sown-and-read': () =>
    'The pots have been read since, so the day of sowing stands. Take the test back and start anew.',
  'not-sown-yet': () => 'Say first on which day it was sown.',
  'read-in-the-future': () => 'That day is still to come. Give today, or a day that is past.',
  'read-before-sown': ({ sownOn }) => `It was sown on ${sownOn}. Give that day or a later one.`,
  'read-that-day-already': () =>
    'There is a reading of that day already. Correct it where it stands, or give another day.',
  'reading-not-there': () => 'That reading has been corrected since. Open the page afresh and look at what stands.',
  'no-pot-read': () => 'Fill in the line of one pot at least.',
  'pot-not-there': () => 'One of these pots is not in this test. Open the page afresh.',
  'pot-half-read': () => 'Give a whole number from 0, or leave the whole line of this pot empty.',
  'more-up-than-seeds': ({ seeds }) => `Only ${seeds} seeds went into this pot. Give ${seeds} or fewer.`,
  'more-distorted-than-up': ({ up }) => `Only ${up} are up in this pot. Give ${up} or fewer.`,
  'test-ended': () => 'This test is ended, and nothing new is read of it. Start another.',
};
