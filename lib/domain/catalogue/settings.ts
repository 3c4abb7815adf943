import { hostGroups } from './host-groups';
import { allows, type ChoiceSetting, type Setting, type WholeSetting } from './setting-row';
import { sources } from './sources';
import { type SuccessionRule, successionRules } from './succession-rules';
import { type TroubleKey, troubles } from './troubles';
import { referenceFrosts } from './windows';

// biome-ignore format: one setting a line
const settingRows = {
  manuringIntervalYears: { kind: 'whole', value: 3, least: 1, most: 10, unit: 'years', name: 'Manuring interval', says: 'Ground is due its turn so many seasons after it was last manured.', source: 'common-practice' },
  manureRateGPerM2: { kind: 'whole', value: 5000, least: 500, most: 20_000, unit: 'g/m²', name: 'Dressing', says: 'How much rotted manure due ground justifies.', source: 'thrive' },
  barrowLitres: { kind: 'whole', value: 85, least: 20, most: 300, unit: 'L', name: 'A barrow-load', says: 'What the society’s barrow holds.', source: 'common-practice' },
  capLoads: { kind: 'whole', value: 0, least: 0, most: 999, unit: 'loads', name: 'Usual limit for one holding', says: 'The most that one holding may ask of a delivery; 0 for no limit. Each delivery may set its own.', source: 'common-practice' },
  cultivableSharePercent: { kind: 'whole', value: 75, least: 10, most: 100, unit: '%', name: 'Cultivable share', says: 'What is dug of a plot that has no beds drawn yet.', source: 'common-practice' },
  edgeWidthCm: { kind: 'whole', value: 30, least: 0, most: 100, unit: 'cm', name: 'Edge, width', says: 'An overlap narrower than this counts as kept: beds wander when they are dug.', source: 'common-practice' },
  edgeSharePercent: { kind: 'whole', value: 5, least: 0, most: 50, unit: '%', name: 'Edge, share', says: 'So does an overlap of less than this share of the planting.', source: 'common-practice' },
  seasonFrom: { kind: 'month-day', value: '05-01', name: 'Season window, from', says: 'A planting counts for the years in which it stood on any day from here …', source: 'common-practice' },
  seasonTo: { kind: 'month-day', value: '08-31', name: 'Season window, to', says: '… to here.', source: 'common-practice' },
  lastFrost: { kind: 'month-day', value: referenceFrosts.lastFrost, earliest: '02-01', latest: '06-30', name: 'Last spring frost, usual', says: 'Sowing, planting and clearing that follow the spring move with it. It differs from site to site, and no table tells yours: ask whoever has gardened here longest.', source: 'common-practice' },
  firstFrost: { kind: 'month-day', value: referenceFrosts.firstFrost, earliest: '08-01', latest: '12-31', name: 'First autumn frost, usual', says: 'What must be grown or cleared before it moves with it.', source: 'common-practice' },
  neighboursSee: {
    kind: 'choice', value: 'crop', choices: [{ key: 'crop', name: 'crop and group' }, { key: 'group', name: 'group only' }, { key: 'nothing', name: 'nothing' }],
    name: 'What neighbours see', says: 'Of other people’s beds on the site plan. Never yields, notes or contact details.', source: 'common-practice',
  },
  troublesNearby: {
    kind: 'choice', value: 'told', choices: [{ key: 'told', name: 'that there is one nearby' }, { key: 'nothing', name: 'nothing' }],
    name: 'Troubles, neighbours are told', says: 'Of a trouble found near their ground: never which, nor where.', source: 'common-practice',
  },
  seasonPaperFor: {
    kind: 'choice', value: 'committee', choices: [{ key: 'committee', name: 'the committee' }, { key: 'members', name: 'every member' }],
    name: '“After the season”, read by', says: 'Loads, credits and money by delivery and by holding, for the annual meeting.', source: 'common-practice',
  },
  seasonPaperNames: {
    kind: 'choice', value: 'plots', choices: [{ key: 'plots', name: 'plots only' }, { key: 'names', name: 'plots and names' }],
    name: '“After the season”, holdings by', says: 'Whether holders are named on that paper, for all who read it.', source: 'common-practice',
  },
} as const satisfies Record<string, Setting>;

type BreakKey = `break.${(typeof hostGroups)[number]['key']}`;
type TroubleSetting = `trouble.${TroubleKey}`;
type RuleKey = `rule.${SuccessionRule['key']}`;
export type SettingKey = keyof typeof settingRows | BreakKey | TroubleSetting | RuleKey;

const breakRows = Object.fromEntries(
  hostGroups.map(({ key, name, breakYears, source, ...row }) => [
    `break.${key}`,
    {
      kind: 'whole',
      value: breakYears,
      least: 0,
      most: 20,
      unit: 'clear years',
      name: `Break, ${name.toLowerCase()}`,
      says: `Clear years between two plantings on the same ground.${'otherwise' in row ? ` ${sources[row.otherwise.source].publisher}: ${row.otherwise.says}.` : ''}`,
      source,
    },
  ]),
) as unknown as Record<BreakKey, WholeSetting & Setting>;

/** As a setting, this many clear years stand for "no break clears it". */
export const neverClearYears = 99;

const troubleRows = Object.fromEntries(
  troubles.map(({ key, name, clearYears, source, otherwise }) => [
    `trouble.${key}`,
    {
      kind: 'whole',
      value: clearYears ?? neverClearYears,
      least: 0,
      most: neverClearYears,
      unit: 'clear years',
      name: `Where found, ${name.toLowerCase()}`,
      says: `Clear years without a host on ground where it was found; ${neverClearYears} where no break clears it.${otherwise.map((other) => ` ${sources[other.source].publisher}: ${other.clearYears ?? 'never'}.`).join('')}`,
      source,
    },
  ]),
) as unknown as Record<TroubleSetting, WholeSetting & Setting>;

const ruleRows = Object.fromEntries(
  successionRules.map(({ key, name, says, source }) => [
    `rule.${key}`,
    {
      kind: 'choice',
      value: 'shown',
      choices: [
        { key: 'shown', name: 'shown' },
        { key: 'off', name: 'off' },
      ],
      name,
      says,
      source,
    },
  ]),
) as unknown as Record<RuleKey, ChoiceSetting & Setting>;

/** Every value that a society may set for itself, with its default, bounds and source. */
export const settings: Readonly<Record<SettingKey, Setting>> = {
  ...settingRows,
  ...breakRows,
  ...ruleRows,
  ...troubleRows,
};

/** Whether a text names a setting. */
export function isSettingKey(text: string): text is SettingKey {
  return Object.hasOwn(settings, text);
}

/** The values in force, as the maths takes them. */
export type SettingValues = {
  readonly [Key in keyof typeof settingRows]: (typeof settingRows)[Key] extends { kind: 'whole' } ? number : string;
} & {
  readonly breakYears: Readonly<Record<string, number>>;
  /** By trouble; null: no break clears it. */
  readonly troubleYears: Readonly<Record<string, number | null>>;
  /** The succession rules that the society wants shown. */
  readonly shownRules: readonly string[];
};

/**
 * The values in force: the society's own where it has any, the defaults elsewhere.
 *
 * @param own  raw values by key; those that no longer pass their own bounds are passed over
 */
export function settingValues(own: Readonly<Record<string, unknown>>): SettingValues {
  const valueOf = (key: SettingKey) => (isAllowed(key, own[key]) ? own[key] : settings[key].value);
  const plain = Object.fromEntries(Object.keys(settingRows).map((key) => [key, valueOf(key as SettingKey)]));
  const breakYears = Object.fromEntries(hostGroups.map(({ key }) => [key, valueOf(`break.${key}`)]));
  const troubleYears = Object.fromEntries(
    troubles.map(({ key }) => {
      const years = valueOf(`trouble.${key}`);
      return [key, years === neverClearYears ? null : years];
    }),
  );
  const shownRules = successionRules.map(({ key }) => key).filter((key) => valueOf(`rule.${key}`) === 'shown');
  return { ...plain, breakYears, troubleYears, shownRules } as unknown as SettingValues;
}

/** The value in force of one setting, as a society sets it: the number or the word. */
export function settingInForce(values: SettingValues, key: SettingKey): string | number {
  const [kind, name = ''] = key.split('.');
  if (kind === 'break') return values.breakYears[name] ?? 0;
  if (kind === 'trouble') return values.troubleYears[name] ?? neverClearYears;
  if (kind === 'rule') return values.shownRules.includes(name) ? 'shown' : 'off';
  return values[key as keyof typeof settingRows];
}

/** The rules that a delivery keeps as they stood when it was planned: a change counts from the next one on. */
export const deliveryRules: readonly SettingKey[] = [
  'manuringIntervalYears',
  'manureRateGPerM2',
  'barrowLitres',
  'capLoads',
  'cultivableSharePercent',
];

/** The settings by what they are about, in the order in which they are shown. */
export const settingParts: readonly { readonly name: string; readonly keys: readonly SettingKey[] }[] = [
  { name: 'Ground, manure and seasons', keys: Object.keys(settingRows) as SettingKey[] },
  { name: 'Breaks', keys: Object.keys(breakRows) as SettingKey[] },
  { name: 'General rules', keys: Object.keys(ruleRows) as SettingKey[] },
  { name: 'Where a trouble has been found', keys: Object.keys(troubleRows) as SettingKey[] },
];

/** Whether a value may be set: a whole number within the bounds, one of the choices, or a day of the year. */
export function isAllowed(key: SettingKey, value: unknown): boolean {
  return allows(settings[key], value);
}
