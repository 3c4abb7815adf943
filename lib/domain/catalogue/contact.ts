/** How the part that is eaten lies to the soil: in or on it, reached by what rain throws up, or clear of both. */
export type SoilContact = 'touches-soil' | 'splashed' | 'clear';
/** Either: often raw, so it is taken as raw. */
export type Eaten = 'raw' | 'either' | 'cooked';

export type CropContact = { readonly cropKey: string; readonly contact: SoilContact; readonly eaten: Eaten };

/**
 * Crops by how they touch the soil and whether they are eaten raw: common practice, on the terms of 7 CFR
 * 205.203(c)(1), which asks whether the edible part has contact with the soil's surface or its particles.
 */
const groups: readonly (readonly [SoilContact, Eaten, string])[] = [
  ['touches-soil', 'raw', 'radish spring-onion lettuce endive lambs-lettuce winter-purslane strawberry melon'],
  ['touches-soil', 'either', 'carrot onion shallot garlic welsh-onion beetroot turnip celery celeriac florence-fennel'],
  ['touches-soil', 'either', 'horseradish chicory courgette cucumber asparagus oca jerusalem-artichoke leek swede'],
  ['touches-soil', 'cooked', 'parsnip salsify scorzonera early-potato maincrop-potato sweet-potato'],
  ['touches-soil', 'cooked', 'winter-squash butternut'],
  ['splashed', 'raw', 'rocket coriander dill chives parsley'],
  [
    'splashed',
    'either',
    'summer-cabbage winter-cabbage spring-cabbage chinese-cabbage pak-choi kohlrabi kale cauliflower',
  ],
  ['splashed', 'either', 'calabrese mustard-greens mizuna spinach tomato'],
  ['splashed', 'cooked', 'chard new-zealand-spinach purple-sprouting french-bean rhubarb'],
  ['clear', 'raw', 'mangetout'],
  ['clear', 'either', 'pea sweetcorn pepper tomatillo brussels-sprout'],
  ['clear', 'cooked', 'broad-bean runner-bean aubergine globe-artichoke'],
];

export const cropContacts: readonly CropContact[] = groups.flatMap(([contact, eaten, keys]) =>
  keys.split(' ').map((cropKey) => ({ cropKey, contact, eaten })),
);

/** Green manures: nothing of them is harvested to eat. */
export const notEaten: readonly string[] = [
  'mustard',
  'field-bean',
  'winter-vetch',
  'clover',
  'grazing-rye',
  'phacelia',
  'buckwheat',
];

/** How a crop lies to the soil and is eaten; undefined for what is not eaten or not in the catalogue. */
export function cropContactOf(cropKey: string): CropContact | undefined {
  return cropContacts.find((row) => row.cropKey === cropKey);
}
