import type { MeasuresRefusal } from '@/lib/usecases/refusals/measures';
import type { Words } from './shape';

export const measuresWords: Words<MeasuresRefusal> = {
  'length-wanted': () => 'Give a length, such as 3.6 m, 360 cm or 12 ft 6 in.',
  'thickness-wanted': () => 'Give a thickness up to a metre, such as 5 cm or 2 in.',
  'area-wanted': () => 'Give an area above 0, such as 12.5 m2, 400 sq ft or 10 rods.',
  'volume-wanted': () => 'Give what it holds, such as 20 L or 4 gallons.',
  'mass-wanted': () => 'Give a weight, such as 8.5 kg or 18 lb 12 oz.',
  'bale-mass-wanted': () => 'Give the weight of one bale, from 1 kg to 2 t.',
  'jar-size-wanted': ({ least, most }) => `Give what the jar holds, from ${least} to ${most} mL.`,
  'jar-mass-wanted': ({ least, most }) => `Give what a jarful weighs, from ${least} to ${most} g.`,
  'rate-wanted': () => 'Give a rate above 0, such as 500 g/m2 or 4 oz/sq yd.',
  'number-wanted': () => 'Give a number above 0, such as 8 or 8.5.',
  'choice-wanted': () => 'Choose one from the list.',
  'one-of-two': () => 'Fill in one of the two, and leave the other empty.',
  'ridge-too-short': () => 'A ridge is at least as long as broad. For a round heap choose the pointed one.',
  'top-larger-than-foot': () => 'The top of a heap is no larger than its foot.',
  'lighter-than-empty': () => 'A full bucket weighs more than the empty one.',
  'no-bucketful': () => 'Weigh one bucketful at least; five or more give a density to go by.',
  'weighs-nothing': () => 'That comes to less than a gram a litre. Look at the weights again.',
  'heaped-below-struck': () => 'A heaped barrow holds at least as much as a level one.',
  'holds-nothing': () => 'That comes to less than a litre. Look at the numbers again.',
  'nothing-to-keep': () => 'There is nothing to keep. Measure first.',
};
