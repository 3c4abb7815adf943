import type { GroundRefusal } from '@/lib/usecases/refusals/ground';
import type { Words } from './shape';

export const groundWords: Words<GroundRefusal> = {
  'bed-overlaps': ({ edge, name, byCm }) =>
    `The ${edge} edge lies ${byCm} cm over bed ${name}. Draw that edge in, or move the bed; touching is fine.`,
  'bed-outside-plot': ({ edge, byCm }) =>
    `The ${edge} edge lies ${byCm} cm outside the plot. Draw that edge in, or move the bed.`,
  'bed-too-small': ({ least }) => `A bed measures at least ${least} cm each way.`,
  'length-wrong': ({ what }) => `That is not a length. Give ${what} as 3.6 m, 360 cm, 12 ft or 12 ft 6 in.`,
  'cut-outside-bed': ({ size }) => `The cut must lie inside the bed: more than nothing and less than ${size} cm.`,
  'beds-do-not-join': () => 'These two beds do not share a whole edge, so they make no rectangle together.',
  'bed-name-taken': ({ name }) => `There is a bed ${name} on this plot already. Give another name.`,
  'trouble-unknown': () => 'Choose what was found from the list.',
  'found-in-the-future': () => 'It can only have been found today or earlier.',
  'area-wrong': () => 'Give an area as a number, such as 12 or 12.5 m²; or 120 sq ft.',
  'nothing-wanted': () => 'Choose at least one crop or group to plan for.',
  'wanted-twice': ({ name }) => `${name} is asked for twice. Keep one of the two rows.`,
  'no-beds-to-plan': () => 'Tick at least one bed that no standing crop keeps.',
  'beds-not-yours': () => 'One of these beds is no longer part of this ground. Open the page afresh.',
  'course-first-season': ({ least, most }) => `Begin with a season from ${least} to ${most}.`,
  'course-not-solved': () => 'There is no plan yet to change or take on.',
  'course-ended': () => 'It has ended already.',
  'course-out-of-date': () => 'The beds have changed since this was worked out. Ask again.',
  'not-in-course': () => 'Choose one of the crops and groups of this plan, or leave the bed open.',
  'one-course-at-a-time': () => 'A plan for this ground is being worked out. Wait for it, or cancel it first.',
  'crop-unknown': ({ crop }) => `There is no crop called ${crop}. Choose one from the list; the secretary can add one.`,
  'part-outside-bed': () => 'That part reaches past the end of the bed.',
  'cleared-before-sown': () => 'It cannot be cleared before it was sown or planted.',
  'day-or-season': () => 'Give the season, or the day it was sown or planted.',
  'season-out-of-range': ({ least, most }) => `Give a season from ${least} to ${most}.`,
  'plantings-faults': ({ count }) =>
    `Nothing was taken in: ${count === 1 ? 'one cell needs' : `${count} cells need`} mending first. They are listed below.`,
  'crop-name-taken': ({ name }) => `There is a crop called ${name} already.`,
  'bed-retired': ({ name }) => `Bed ${name} is no longer in use.`,
  'loads-wrong': () => 'Give whole loads, 0 to 9,999, or leave it empty.',
  'weight-wrong': () => 'Give a weight such as 60 kg or 1 cwt, up to 1,000 tonnes, or leave it empty.',
  'rate-wrong': () => 'Give a rate such as 5 kg/m², 70 g/m² or 4 oz/sq yd, up to 100 kg/m², or leave it empty.',
  'amount-too-much': () => 'That comes to more than 1,000 tonnes. Give what was put on this ground.',
  'not-by-the-barrow': () => 'Give meal and lime by weight or by rate: a barrow-load of them has no known weight.',
  'depth-out-of-range': ({ least, most }) => `Give a depth from ${least} to ${most} cm, or leave it empty.`,
  'done-in-the-future': () => 'It can only have been done today or earlier.',
  'work-of-a-sheet': () => 'A ground sheet logged this. Take the tick back on the sheet, and this goes with it.',
};
