import type { MonthDay } from '../calendar/month-day';
import { type CropGroup, cropGroupName } from './crop-groups';
import { type DiggingMethod, diggingMethods } from './digging-methods';
import { meals } from './meals';
import type { Setting, SettingShape } from './setting-row';
import type { SourceKey } from './sources';

/** The groups that rotate: each has its own way of having its ground made ready. */
export type RecipeGroup = Exclude<CropGroup, 'standing'>;

// biome-ignore format: one field a line
const fields = {
  method: { kind: 'choice', choices: diggingMethods.map(({ key, name }) => ({ key, name: name.toLowerCase() })), name: 'Method', says: 'How the ground is opened.' },
  rateGPerM2: { kind: 'whole', least: 0, most: 20_000, unit: 'g/m²', typedIn: 'kg', name: 'Manure', says: 'Rotted manure on each square metre; 0 for none.' },
  manureBottomPercent: { kind: 'whole', least: 0, most: 100, unit: '%', name: 'Manure in the bottom', says: 'The rest goes into the spit that is turned on to it. It counts where a trench is opened.' },
  meal: { kind: 'choice', choices: [{ key: 'none', name: 'none' }, ...meals.map(({ key, name }) => ({ key, name: name.toLowerCase() }))], name: 'Meal', says: 'A concentrated meal beside the manure.' },
  mealGPerM2: { kind: 'whole', least: 1, most: 500, unit: 'g/m²', name: 'Meal, how much', says: 'On each square metre, where there is a meal.' },
  mealInto: { kind: 'choice', choices: [{ key: 'bottom', name: 'the bottom' }, { key: 'top', name: 'the top spit' }], name: 'Meal goes into', says: 'The bottom counts where a trench is opened.' },
  strawGPerM2: { kind: 'whole', least: 0, most: 2000, unit: 'g/m²', name: 'Straw', says: 'Laid to walk on, and dug in as the work goes; 0 for none.' },
  lime: { kind: 'choice', choices: [{ key: 'none', name: 'none' }, { key: 'to-target', name: 'up to the target pH' }], name: 'Lime', says: 'How much follows from a soil test and the texture.' },
  limeTargetPhTenths: { kind: 'whole', least: 50, most: 75, unit: 'tenths of pH', name: 'Target pH', says: 'Up to which it is limed.' },
  limeApartMonths: { kind: 'whole', least: 1, most: 12, unit: 'months', name: 'Between lime and manure', says: 'Never both at once: lime drives the nitrogen off. Lime first, in autumn; then manure when these months have passed.' },
  firmness: { kind: 'choice', choices: [{ key: 'firm', name: 'firm' }, { key: 'loose', name: 'loose' }], name: 'Firm or loose', says: 'How the ground is left for the crop.' },
  startHeavy: { kind: 'month-day', name: 'Start on heavy soil', says: 'Heavy soil is opened before hard winter.' },
  finishHeavy: { kind: 'month-day', name: 'Finish on heavy soil', says: 'Frost breaks down what is left rough; sticking-wet clay is never dug.' },
  startLight: { kind: 'month-day', name: 'Start on light soil', says: 'Light soil is opened in spring.' },
  finishLight: { kind: 'month-day', name: 'Finish on light soil', says: 'In time for the ground to settle before it is sown or planted.' },
  springFinishCm: { kind: 'whole', least: 0, most: 20, unit: 'cm', name: 'Spring finish', says: 'How deep the top is folded in when spring comes; 0 for not at all.' },
  leftHigh: { kind: 'choice', choices: [{ key: 'yes', name: 'yes' }, { key: 'no', name: 'no' }], name: 'Left high', says: 'Whether the dug ground is left standing high, to settle over winter.' },
} as const satisfies Record<string, SettingShape>;

export type RecipeField = keyof typeof fields;

/** What each field of a recipe holds. */
export type RecipeValues = {
  readonly [Field in RecipeField]: (typeof fields)[Field] extends { kind: 'whole' } ? number : MonthDay;
} & {
  readonly method: DiggingMethod;
  readonly mealInto: 'bottom' | 'top';
  readonly lime: 'none' | 'to-target';
  readonly firmness: 'firm' | 'loose';
  readonly leftHigh: 'yes' | 'no';
};

/** One value of one group's recipe: its source, and what others say. */
type Row<Field extends RecipeField> = readonly [value: RecipeValues[Field], source: SourceKey, otherwise?: string];
type Rows = { readonly [Field in RecipeField]: Row<Field> };

const seasons = 'Thrive: manure on heavy soil in autumn, on light soil in spring. The day is common practice.';

// What holds for every group that says nothing else. The dressing is the society's, which starts from this one.
// biome-ignore format: one field a line
const routine: Rows = {
  method: ['single-digging', 'common-practice'],
  rateGPerM2: [5000, 'thrive'],
  manureBottomPercent: [75, 'common-practice', 'Half a load in a trench’s bottom and a sprinkling of the next half on the top spit that follows.'],
  meal: ['none', 'common-practice'],
  mealGPerM2: [70, 'from-memory', 'Two ounces to the square yard of hoof and horn; some give four. Another meal has its own usual rate.'],
  mealInto: ['top', 'common-practice'],
  strawGPerM2: [0, 'common-practice'],
  lime: ['none', 'common-practice'],
  limeTargetPhTenths: [65, 'rb209-vegetables', 'The same table: 5.8 on peat.'],
  limeApartMonths: [3, 'teagasc-slurry', 'Its three to six months are for lime before slurry or urea; manure on plots is taken as alike. A society’s leaflet: two.'],
  firmness: ['loose', 'common-practice'],
  startHeavy: ['10-15', 'common-practice', seasons],
  finishHeavy: ['12-15', 'common-practice', seasons],
  startLight: ['02-15', 'common-practice', seasons],
  finishLight: ['04-01', 'common-practice', seasons],
  springFinishCm: [8, 'common-practice', 'Two or three inches.'],
  leftHigh: ['no', 'common-practice'],
};

// Authorities disagree on which group gets the manure, so each row says who would have it otherwise.
// biome-ignore format: one field a line
const groups: Readonly<Record<RecipeGroup, Partial<Rows>>> = {
  alliums: {
    method: ['double-digging', 'common-practice', 'Onions root deep where they can. The RHS asks now what double digging gains, but on ground that is packed or badly drained.'],
    rateGPerM2: [5000, 'thrive', 'Manured with the legumes in J. Humphries’ three-year course; the wartime leaflet manures potatoes and roots in their place.'],
    meal: ['hoof-and-horn', 'common-practice', 'Slow, and forked into the bottom so that it is there in spring.'],
    mealInto: ['bottom', 'common-practice'],
    strawGPerM2: [500, 'common-practice', 'No source gives a figure: a small bale to about 25 m².'],
    firmness: ['firm', 'common-practice'],
    startHeavy: ['10-01', 'common-practice', `${seasons} Months ahead, so that it settles.`],
    finishHeavy: ['12-01', 'common-practice', seasons],
    startLight: ['02-01', 'common-practice', seasons],
    finishLight: ['03-10', 'common-practice', seasons],
    leftHigh: ['yes', 'common-practice'],
  },
  brassicas: {
    rateGPerM2: [5000, 'thrive', 'RHS: 10 kg/m² for hungry crops such as these. J. Humphries’ three-year course limes and feeds this third, and manures none of it.'],
    lime: ['to-target', 'humphries-course'],
    limeTargetPhTenths: [65, 'rb209-vegetables', 'The same table: 7.0 where clubroot is a problem, 5.8 on peat.'],
    firmness: ['firm', 'common-practice', 'Sprouts and cauliflowers blow over and run loose on soft ground.'],
    startLight: ['03-01', 'common-practice', seasons],
    finishLight: ['04-30', 'common-practice', seasons],
  },
  legumes: {
    rateGPerM2: [0, 'hills-course', 'They use what potatoes left. J. Humphries’ three-year course manures them; the Ministry’s guide of 1945 works manure into the lower spit for runner beans.'],
    manureBottomPercent: [100, 'allotment-guide-1945-beans'],
    startLight: ['02-15', 'common-practice', seasons],
    finishLight: ['04-15', 'common-practice', seasons],
  },
  roots: {
    rateGPerM2: [0, 'common-practice', 'Long roots fork in fresh manure. RHS: 10 kg/m² for beetroot; the wartime leaflet manures roots with potatoes.'],
    startLight: ['02-15', 'common-practice', seasons],
    finishLight: ['03-31', 'common-practice', seasons],
    springFinishCm: [10, 'common-practice', 'A deep, fine tilth.'],
  },
  potatoes: {
    rateGPerM2: [5000, 'thrive', 'The wartime leaflet and L. D. Hills manure before potatoes. RHS: 10 kg/m² for hungry crops such as these; J. Humphries’ three-year course gives this third none.'],
    lime: ['none', 'common-practice', 'Lime brings scab.'],
    springFinishCm: [0, 'common-practice', 'The drills are drawn straight into it.'],
  },
  cucurbits: {
    startLight: ['03-15', 'common-practice', seasons],
    finishLight: ['05-15', 'common-practice', seasons],
  },
  leaves: {
    method: ['forking', 'common-practice'],
    springFinishCm: [5, 'common-practice'],
  },
};

export type RecipeKey = `recipe.${RecipeGroup}.${RecipeField}`;

export const recipeGroups = Object.keys(groups) as RecipeGroup[];
export const recipeFields = Object.keys(fields) as RecipeField[];

/** The fields by what they are about, in the order in which they are shown. What a form leaves out, it would put back. */
export const recipeParts: readonly { readonly name: string; readonly fields: readonly RecipeField[] }[] = [
  { name: 'Digging', fields: ['method', 'firmness', 'leftHigh', 'springFinishCm'] },
  { name: 'Manure and straw', fields: ['rateGPerM2', 'manureBottomPercent', 'strawGPerM2'] },
  { name: 'Meal beside the manure', fields: ['meal', 'mealGPerM2', 'mealInto'] },
  { name: 'Lime, and its distance from manure', fields: ['lime', 'limeTargetPhTenths', 'limeApartMonths'] },
  { name: 'When', fields: ['startHeavy', 'finishHeavy', 'startLight', 'finishLight'] },
];

function rowOf(group: RecipeGroup, field: RecipeField): Setting {
  const [value, source, otherwise] = groups[group][field] ?? routine[field];
  const { says } = fields[field];
  return { ...fields[field], value, source, says: [says, otherwise].filter(Boolean).join(' ') } as Setting;
}

/** Every value of every group's recipe that a society or a member may set for itself. */
export const recipes = Object.fromEntries(
  recipeGroups.flatMap((group) => recipeFields.map((field) => [`recipe.${group}.${field}`, rowOf(group, field)])),
) as unknown as Readonly<Record<RecipeKey, Setting>>;

/** Whether a text names a value of a recipe. */
export function isRecipeKey(text: string): text is RecipeKey {
  return Object.hasOwn(recipes, text);
}

/** What a row of the recipes is called: the group and the field. */
export function recipeRowName(key: RecipeKey): string {
  const [, group = ''] = key.split('.');
  return `${cropGroupName(group as RecipeGroup)}, ${recipes[key].name.toLowerCase()}`;
}
