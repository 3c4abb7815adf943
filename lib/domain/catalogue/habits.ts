import { diggingSizes } from './digging-methods';
import { type PaceKey, paces, standardBodyKg } from './paces';
import type { Setting } from './setting-row';
import { settings } from './settings';
import { type SoilKey, soils } from './soils';

const asChoices = <Key extends string>(rows: readonly { readonly key: Key; readonly name: string }[]) =>
  rows.map(({ key, name }) => ({ key, name: name.toLowerCase() }));

const barrow = settings.barrowLitres;

// biome-ignore format: one habit a line
const habitRows = {
  trenchWidthCm: { kind: 'whole', value: 60, least: 30, most: 100, unit: 'cm', name: 'Width of a trench', says: 'For double digging. The Ministry’s wartime leaflet gives 15 in (38 cm) for single digging.', source: 'rhs-double-digging' },
  spitDepthCm: { kind: 'whole', value: diggingSizes.spitDepthCm.value, least: 10, most: 40, unit: 'cm', name: 'Depth of a spit', says: 'How deep your spade goes in.', source: diggingSizes.spitDepthCm.source },
  layout: {
    kind: 'choice', value: 'as-suggested', choices: [{ key: 'as-suggested', name: 'whichever is less carrying' }, { key: 'two-halves', name: 'along and back, in two halves' }, { key: 'straight-through', name: 'straight through' }],
    name: 'Layout', says: 'Along and back, the first trench’s soil lies beside the last; straight through, it is carried to the far end. Halves of less than 90 cm are dug only where you ask for them.', source: 'common-practice',
  },
  soil: { kind: 'choice', value: 'loamy', choices: asChoices(soils), name: 'Soil', says: 'Assumed until you say: it settles when to dig, how far the ground swells, and how much lime it takes.', source: 'common-practice' },
  pace: { kind: 'choice', value: 'gentle', choices: asChoices(paces), name: 'Pace', says: 'How hard you go at it.', source: 'common-practice' },
  ageBand: {
    kind: 'choice', value: 'not-said', choices: [{ key: 'not-said', name: 'not said' }, { key: 'under-60', name: 'under 60' }, { key: '60-or-over', name: '60 or over' }],
    name: 'Your age', says: 'The energy costs of work that are published for ages 19 to 59 do not hold for everybody.', source: 'common-practice',
  },
  bodyMassKg: { kind: 'whole', value: standardBodyKg.value, least: 30, most: 250, unit: 'kg', name: 'What you weigh', says: 'Work costs a heavier body more. Until you say, the body of the published tables is taken.', source: standardBodyKg.source },
  sessionMinutes: { kind: 'whole', value: 45, least: 10, most: 480, unit: 'min', name: 'A session', says: 'How long you work at one go, rests included. The wartime leaflet wants half an hour of a beginner, later an hour.', source: 'common-practice' },
  sessionsPerWeek: { kind: 'whole', value: 3, least: 1, most: 14, unit: 'a week', name: 'Sessions', says: 'How often you come to dig.', source: 'common-practice' },
  barrowLitres: { ...barrow, name: 'Your barrow holds', says: 'The society’s, unless yours differs. Loads are booked by the society’s barrow all the same.' },
  jarMl: { kind: 'whole', value: 370, least: 50, most: 5000, unit: 'mL', name: 'Your jar holds', says: 'The measure for meal: a one-pound jam jar.', source: 'from-memory' },
  jarWeighedG: { kind: 'whole', value: 0, least: 0, most: 10_000, unit: 'g', name: 'A jarful of meal weighs', says: 'Weigh one, without the jar; 0 while nobody has. Until then it is reckoned from published densities.', source: 'common-practice' },
} as const satisfies Record<string, Setting>;

export type HabitField = keyof typeof habitRows;
export type HabitKey = `habit.${HabitField}`;

/** What each habit holds. */
export type HabitValues = {
  readonly [Field in HabitField]: (typeof habitRows)[Field] extends { kind: 'choice' } ? string : number;
} & {
  readonly layout: 'as-suggested' | 'two-halves' | 'straight-through';
  readonly soil: SoilKey;
  readonly pace: PaceKey;
  readonly ageBand: 'not-said' | 'under-60' | '60-or-over';
};

export const habitFields = Object.keys(habitRows) as HabitField[];

/** The habits by what they are about, in the order in which they are shown. What a form leaves out, it would put back. */
export const habitParts: readonly { readonly name: string; readonly fields: readonly HabitField[] }[] = [
  { name: 'Ground and trenches', fields: ['soil', 'trenchWidthCm', 'spitDepthCm', 'layout'] },
  { name: 'Pace and days', fields: ['pace', 'sessionMinutes', 'sessionsPerWeek', 'ageBand', 'bodyMassKg'] },
  { name: 'Barrow and jar', fields: ['barrowLitres', 'jarMl', 'jarWeighedG'] },
];

/** A member's own ways of working, each with what is taken while they have not said. Nobody else reads them. */
export const habits: Readonly<Record<HabitField, Setting>> = habitRows;
