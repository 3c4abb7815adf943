import type { SourceKey } from './sources';

/**
 * How far a manure has come. Raw: from the building, or heaped under three months. Young: heaped from three months on.
 * Rotted: a year and more. Composted: by heat, as the compost rule below has it.
 */
export type ManureState = 'raw' | 'young' | 'rotted' | 'composted';

/** One published wait from manuring to harvest. */
export type HarvestInterval = {
  readonly key: string;
  readonly states: readonly ManureState[];
  /** Only where the part that is eaten has contact with the soil; only where it has none; or anyhow. */
  readonly contact: 'with-soil' | 'without' | 'any';
  /** Only for crops eaten raw. */
  readonly rawOnly: boolean;
  readonly wait: { readonly days: number } | { readonly months: number } | { readonly monthsOfAge: number };
  /** Whether it sets the date: what is only remembered is shown and sets none. */
  readonly counts: boolean;
  readonly source: SourceKey;
};

/** Materials that are sold as made by heat, and materials without any manure: common practice. */
export const compostedMaterials: readonly string[] = ['green-compost', 'food-compost', 'mushroom-compost'];
export const notManure: readonly string[] = ['straw', 'wood-chip'];

const unheated: readonly ManureState[] = ['raw', 'young', 'rotted'];

/**
 * The organic rule knows raw manure and compost made by heat, nothing between: a rotted heap whose heat nobody measured
 * is raw to it. A year's rot is advice on the heap: counted here from the day it was fresh, in the heap and then in the
 * ground, which is our reading.
 */
// biome-ignore format: one interval a line
export const harvestIntervals: readonly HarvestInterval[] = [
  { key: 'organic-contact', states: unheated, contact: 'with-soil', rawOnly: false, wait: { days: 120 }, counts: true, source: 'nop-manure' },
  { key: 'organic-clear', states: unheated, contact: 'without', rawOnly: false, wait: { days: 90 }, counts: true, source: 'nop-manure' },
  { key: 'food-agency-fresh', states: ['raw', 'young'], contact: 'any', rawOnly: true, wait: { months: 6 }, counts: true, source: 'fsa-earlier' },
  { key: 'food-agency-treated', states: ['rotted', 'composted'], contact: 'any', rawOnly: true, wait: { months: 2 }, counts: true, source: 'fsa-earlier' },
  { key: 'food-agency-present', states: ['raw', 'young'], contact: 'any', rawOnly: true, wait: { months: 12 }, counts: false, source: 'from-memory' },
  { key: 'year-of-rot', states: unheated, contact: 'any', rawOnly: true, wait: { monthsOfAge: 12 }, counts: true, source: 'rhs-rotting' },
];

/** Heat that makes compost of manure: within these degrees for so many days, turned so often. */
export const compostHeat = {
  leastFahrenheit: 131,
  mostFahrenheit: 170,
  vessel: { days: 3, turnings: 0 },
  windrow: { days: 15, turnings: 5 },
  source: 'nop-manure',
} as const satisfies { readonly source: SourceKey; readonly [key: string]: unknown };
