import type { DeliveriesRefusal } from '@/lib/usecases/refusals/deliveries';
import type { Words } from './shape';

const states: Record<string, string> = {
  planned: 'planned and not yet open for booking',
  open: 'open for booking',
  closed: 'closed for booking',
  tipped: 'tipped and measured',
  shared: 'shared out',
  collecting: 'being collected',
  settled: 'settled',
  called_off: 'called off',
};

export const deliveriesWords: Words<DeliveriesRefusal> = {
  'step-not-now': ({ state = '' }) => `That cannot be done now: the delivery is ${states[state] ?? state}.`,
  'booking-closed': ({ at }) =>
    `Booking closed at ${at}. You can go on the waiting list for what is left over: open the page afresh.`,
  'booked-in-time': () => 'You booked in time, and that booking stands: the waiting list is for who has none.',
  'late-below-share': ({ share }) =>
    `Yours already: ${share}. Ask for ${share} or more; what you do not want you give up at the heap.`,
  'late-has-share': ({ share }) => `Yours already: ${share}. What you do not want you give up at the heap.`,
  'booked-already': () =>
    'Loads are booked already, with needs worked out for this material and density. Leave both as they were, or call this delivery off and plan another.',
  'above-cap': ({ cap }) => `The society’s limit for this delivery is ${cap} a holding. Ask for ${cap} or fewer.`,
  'booked-above-cap': ({ most }) =>
    `Somebody asks for ${most} already. Give a limit of ${most} or more, or leave it empty; the share-out keeps to everybody’s needs first.`,
  'asks-nothing': () => 'Ask for at least one, or withdraw the booking.',
  'bed-not-there': () =>
    'One of these beds is no longer on your ground. Open the page afresh and choose among those of today.',
  'material-unknown': () => 'Choose a material from the list.',
  'density-out-of-range': ({ least, most }) => `Give a density from ${least} to ${most} grams a litre.`,
  'bales-of-straw': () => 'Only straw comes by the bale. Choose straw, or another unit.',
  'whole-bales': () => 'Give whole bales.',
  'bale-weighs': () => 'Choose the kind of bale, or give what one weighs in kilograms.',
  'comes-in-bales': () => 'It comes by the bale, so what a litre of it weighs is not asked.',
  'together-not-now': ({ name, state = '' }) =>
    `“${name}” comes with it and is ${states[state] ?? state}, so this cannot be done for all of them. Nothing was changed.`,
  'comes-another-day': ({ name, day }) =>
    `“${name}” comes on the same lorry, on ${day}. Keep that day here, and put them off together.`,
  'days-out-of-order': () => 'Collecting must end on the day it arrives or later.',
  'closing-in-the-past': () => 'That closing time has passed already. Give a later one.',
  'closing-time-skipped': ({ at }) =>
    `The clocks go forward over ${at}, so that time never comes. Give one an hour earlier or later.`,
  'no-site': () => 'The society has no site yet. Add one under plots first.',
  'another-unsettled': ({ name }) =>
    `“${name}” of the same material is not settled yet, and credits carry over. Settle it first.`,
  'measure-below-collected': ({ collected }) => `Ticked off already: ${collected}, so the heap held at least that.`,
  'confirmed-already': () => 'This share-out is confirmed already. Nothing was changed.',
  'nothing-booked': () => 'Nobody has booked, so there is nothing to share out.',
  'delivery-held': ({ since, reason }) =>
    `It is held since ${since}, because: “${reason}”. Release it with a reason first, or call it off.`,
  'held-already': () => 'It is held already. Release it, or call it off.',
  'not-held': () => 'It is not held, so there is nothing to release.',
  'above-share': ({ left }) =>
    Number(left) > 0
      ? `Left of this share to tick off: only ${left}.`
      : 'This share is collected in full. The secretary can enter loads taken beyond it.',
  'above-heap': ({ left }) => `Left of the heap: only ${left}. If that is wrong, measure the heap again.`,
  'nothing-to-undo': () => 'There is no tick to undo.',
  'too-late-to-undo': ({ minutes }) =>
    `A tick can be undone for ${minutes} minutes. Ask the gate helper or the secretary.`,
  'shares-outstanding': ({ count }) =>
    `Neither collected nor given up: ${count}. Tick them off, or mark them given up.`,
};
