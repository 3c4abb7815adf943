import type { PlotsRefusal } from '@/lib/usecases/refusals/plots';
import type { Words } from './shape';

export const plotsWords: Words<PlotsRefusal> = {
  'csv-faults': ({ count }) =>
    `Nothing was taken in: ${count === 1 ? 'one cell needs' : `${count} cells need`} mending first. They are listed below.`,
  'plot-number-taken': ({ number }) => `Plot ${number} is there already. Give another number.`,
  'plot-let-already': ({ number }) =>
    `Plot ${number} is let on that day. End that tenancy first, or choose a later day.`,
  'plot-not-let': ({ number }) => `Plot ${number} is not let, so there is no tenancy to end.`,
  'end-before-start': ({ from }) => `The tenancy began on ${from}. Give a later day.`,
  'holder-came-later': () => 'A holder who gives it up came after that day. Give a later day.',
  'no-holder-chosen': () => 'Choose at least one member to hold the plot.',
  'no-holder-stays': () =>
    'None of today’s holders would stay, and others must not get their notes and credit. Keep one of them, or end the tenancy and let the plot afresh.',
  'polygon-crosses-itself': () => 'The boundary crosses itself. Give the corners in order, going once round the plot.',
  'polygon-overlaps': ({ number }) =>
    `The boundary runs over plot ${number}. Move the corners apart; a shared boundary is fine.`,
  'plot-too-small': ({ least }) => `A plot measures at least ${least} cm each way.`,
  'cut-outside-plot': ({ least, most }) =>
    `That cut misses the plot. It would be accepted between ${least} and ${most} cm.`,
  'cut-through-bed': ({ bed }) => `The cut runs through bed ${bed}. Move the cut, or split the bed there first.`,
  'beds-outside-drawing': ({ bed }) =>
    `Bed ${bed} would lie outside that boundary. Widen the boundary or move the bed first.`,
  'plot-measured-already': ({ number }) => `Plot ${number} is measured already.`,
  'join-needs-two': () => 'Choose two different plots of one site to join.',
  'join-different-holdings': () =>
    'The two plots are let to different holdings. End one tenancy first, or let both to one holding.',
  'join-apart': () =>
    'These two measured plots do not share a boundary along a straight line, so they cannot be drawn as one.',
  'booker-not-holder': () => 'Choose one of the holders of today, or nobody.',
  'site-name-taken': ({ name }) => `There is a site called ${name} already.`,
};
