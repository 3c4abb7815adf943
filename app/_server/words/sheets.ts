import type { SheetsRefusal } from '@/lib/usecases/refusals/sheets';
import type { Words } from './shape';

export const sheetsWords: Words<SheetsRefusal> = {
  'group-wanted': () => 'Say what the ground is for: nothing is planned here for that season.',
  'no-such-manure': () => 'Choose the manure from the list.',
  'narrower-than-trench': ({ run, width }) =>
    `The ground is ${run} cm that way, and a trench ${width} cm wide. Take a narrower trench, a longer strip, or let the trenches run the other way.`,
  'more-than-a-sheet': () =>
    'That is more than one sheet holds: 150 trenches on end, or a hectare. Take a strip of it, or wider trenches.',
  'nothing-to-lay': () => 'A mulch of nothing is none. Give a rate of manure or of straw, or choose another method.',
  'sheet-begun': ({ done }) =>
    `There is a sheet for this ground and season that is begun: ${done} of its trenches ${done === 1 ? 'is' : 'are'} ticked. Follow it, or take it back first.`,
  'sheet-taken-back': () => 'This sheet was taken back, or another was made in its place. Open the bed to find it.',
  'no-such-trench': ({ most }) => `This sheet has trenches 1 to ${most}.`,
  'trenches-before': ({ next, trench }) =>
    `Trench ${next} comes before trench ${trench} and is not ticked yet. Tick it first, or say that you have done all up to trench ${trench}.`,
  'trenches-after': ({ last, trench }) =>
    `Trench ${last} has been ticked since. Take that back first, or all from trench ${trench} on.`,
};
