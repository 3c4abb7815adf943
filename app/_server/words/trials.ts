import type { TrialsRefusal } from '@/lib/usecases/refusals/trials';
import type { Words } from './shape';

export const trialsWords: Words<TrialsRefusal> = {
  'trial-crop-unknown': () => 'That crop is not known here. Choose one from the list.',
  'trial-days-out-of-order': () => 'Results come in after joining has closed: give a later day.',
  'trial-day-past': () => 'That day has passed. Give today or a later one.',
  'trial-season-wrong': ({ least, most }) => `Give a season from ${least} to ${most} in which its results can be had.`,
  'trial-treatments-alike': () => 'Both treatments are the same. Say what is done otherwise.',
  'trial-joining-closed': () => 'Joining is closed, so nothing of this trial’s ground changes any more.',
  'trial-joined-already': () => 'This plot is in the trial already; a plot takes part once.',
  'trial-ground-overlaps': () => 'The two pieces lie on the same ground. Choose two beds, or the two halves of one.',
  'trial-ground-too-small': () => 'That bed is too short to be halved. Choose another one, or two whole beds.',
  'trial-other-plot': () => 'Both pieces must lie on one plot, so that soil and sun are as like as they can be.',
  'trial-ground-taken': () =>
    'Some of this ground is in another trial of that season, and one would cloud the other. Choose another bed.',
  'trial-left-already': () => 'This plot has left the trial already.',
  'trial-why-left': () => 'The lot is drawn, so say why: how many dropped out, and why, belongs to the report.',
  'trial-over': () => 'The report is open or the trial was called off, so nothing of it changes any more.',
  'trial-not-laid-out': () => 'The lot is not drawn yet, so there is nothing to do or to weigh.',
  'trial-treated-future': () => 'That day is still to come. Give today or an earlier one.',
  'trial-no-harvests': () => 'There is no harvest on record that belongs to this ground alone. Type what came off it.',
  'trial-records-changed': () =>
    'The harvests on record have changed since this page was opened. Open it afresh, look, and confirm.',
  'trial-ground-wrong': () =>
    'Give the ground it came from as an area, such as 3.6 m², or leave it empty for the whole piece.',
  'trial-ground-larger': ({ most }) =>
    `That is more ground than this piece has, which is ${most}. Give the ground it came from.`,
};
