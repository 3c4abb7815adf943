import { describe, expect, test } from 'vitest';
import { cropOf, crops } from '@/lib/domain/catalogue/crops';

// Cornell Cooperative Extension, Cortland County, L. Woodruff, Rotating Vegetables by Family, updated 3 February 2021:
// which vegetables the list puts together. It uses common family names; the botanical names are ours for its groups.
const cornell: Readonly<Record<string, readonly string[]>> = {
  Brassicaceae: [
    'summer-cabbage',
    'winter-cabbage',
    'spring-cabbage',
    'brussels-sprout',
    'cauliflower',
    'calabrese',
    'purple-sprouting',
    'kale',
    'kohlrabi',
    'swede',
    'turnip',
    'chinese-cabbage',
    'pak-choi',
    'radish',
    'mizuna',
    'mustard-greens',
    'horseradish',
    'mustard',
  ],
  Fabaceae: ['pea', 'mangetout', 'broad-bean', 'french-bean', 'runner-bean', 'field-bean', 'clover', 'winter-vetch'],
  Amaryllidaceae: ['onion', 'shallot', 'garlic', 'leek', 'spring-onion', 'welsh-onion', 'chives'],
  Apiaceae: ['carrot', 'parsnip', 'celery', 'celeriac', 'florence-fennel', 'parsley', 'dill'],
  Solanaceae: ['early-potato', 'maincrop-potato', 'tomato', 'pepper', 'aubergine', 'tomatillo'],
  Cucurbitaceae: ['courgette', 'winter-squash', 'butternut', 'cucumber', 'melon'],
  Amaranthaceae: ['beetroot', 'chard', 'spinach'],
  Asteraceae: ['lettuce', 'endive', 'chicory', 'jerusalem-artichoke', 'globe-artichoke'],
  Poaceae: ['sweetcorn', 'grazing-rye'],
  Polygonaceae: ['buckwheat', 'rhubarb'],
  Asparagaceae: ['asparagus'],
  Convolvulaceae: ['sweet-potato'],
  Rosaceae: ['strawberry'],
};

describe('families of the Cornell list', () => {
  test.each(Object.entries(cornell))('%s', (family, keys) => {
    for (const key of keys) expect([key, cropOf(key)?.family]).toEqual([key, family]);
  });

  test('and the catalogue names it for no other crop', () => {
    const named = crops.filter(({ familySource }) => familySource === 'cornell-cortland').map(({ key }) => key);
    expect(named.sort()).toEqual(Object.values(cornell).flat().sort());
  });
});
