import { describe, expect, test } from 'vitest';
import { cropOf, crops } from '@/lib/domain/catalogue/crops';

const namesFrom = (source: string) =>
  new Set(crops.filter(({ nameSource }) => nameSource === source).map(({ binomial }) => binomial));

// Directive 2002/55/EC, Article 2(1)(b), read in its German transposition, Saatgutverkehrsgesetz: Artenverzeichnis,
// nos. 2.1 to 2.36. Species of the list that the catalogue does not carry: chervil and watermelon; rhubarb, see below.
const directive: Readonly<Record<string, readonly string[]>> = {
  'Allium cepa': ['onion', 'shallot', 'spring-onion'],
  'Allium fistulosum': ['welsh-onion'],
  'Allium porrum': ['leek'],
  'Allium sativum': ['garlic'],
  'Allium schoenoprasum': ['chives'],
  'Apium graveolens': ['celery', 'celeriac'],
  'Asparagus officinalis': ['asparagus'],
  'Beta vulgaris': ['beetroot', 'chard'],
  'Brassica oleracea': [
    'summer-cabbage',
    'winter-cabbage',
    'spring-cabbage',
    'brussels-sprout',
    'cauliflower',
    'calabrese',
    'purple-sprouting',
    'kale',
    'kohlrabi',
  ],
  'Brassica rapa': ['turnip', 'chinese-cabbage'],
  'Capsicum annuum': ['pepper'],
  'Cichorium endivia': ['endive'],
  'Cichorium intybus': ['chicory'],
  'Cucumis melo': ['melon'],
  'Cucumis sativus': ['cucumber'],
  'Cucurbita maxima': ['winter-squash'],
  'Cucurbita pepo': ['courgette'],
  'Cynara cardunculus': ['globe-artichoke'],
  'Daucus carota': ['carrot'],
  'Foeniculum vulgare': ['florence-fennel'],
  'Lactuca sativa': ['lettuce'],
  'Petroselinum crispum': ['parsley'],
  'Phaseolus coccineus': ['runner-bean'],
  'Phaseolus vulgaris': ['french-bean'],
  'Pisum sativum': ['pea', 'mangetout'],
  'Raphanus sativus': ['radish'],
  'Scorzonera hispanica': ['scorzonera'],
  'Solanum lycopersicum': ['tomato'],
  'Solanum melongena': ['aubergine'],
  'Spinacia oleracea': ['spinach'],
  'Valerianella locusta': ['lambs-lettuce'],
  'Vicia faba': ['broad-bean'],
  'Zea mays': ['sweetcorn'],
};

describe('species of the Directive on vegetable seed', () => {
  test.each(Object.entries(directive))('%s', (binomial, keys) => {
    for (const key of keys) expect(cropOf(key)?.binomial).toBe(binomial);
  });

  test('and the catalogue names no other species after it', () =>
    expect(namesFrom('eu-2002-55')).toEqual(new Set(Object.keys(directive))));
});

describe('species of other official lists', () => {
  // FAO EcoCrop; FAO World Programme for the Census of Agriculture 2020, crop list; Canada, Seeds Regulations, Schedule I;
  // Germany, Artenverzeichnis: each of these names agrees with at least one of the four.
  test('in at least one of four lists', () => {
    expect(namesFrom('species-lists')).toEqual(
      new Set([
        'Pastinaca sativa',
        'Solanum tuberosum',
        'Helianthus tuberosus',
        'Armoracia rusticana',
        'Tragopogon porrifolius',
        'Oxalis tuberosa',
        'Ipomoea batatas',
        'Fragaria × ananassa',
        'Physalis philadelphica',
        'Phacelia tanacetifolia',
        'Fagopyrum esculentum',
        'Secale cereale',
      ]),
    );
  });

  // Canada, Seeds Regulations, C.R.C., c. 1400, Schedule I, Tables XVI to XX. The Directive calls rhubarb Rheum rhabarbarum.
  test('swede and rhubarb as Canada names them', () => {
    expect(cropOf('swede')?.binomial).toBe('Brassica napus');
    expect(cropOf('rhubarb')?.binomial).toBe('Rheum × hybridum');
    expect(namesFrom('canada-seeds').size).toBe(2);
  });

  // FAO EcoCrop database.
  test('white mustard and New Zealand spinach as EcoCrop names them', () => {
    expect(namesFrom('ecocrop')).toEqual(new Set(['Sinapis alba', 'Tetragonia tetragonioides']));
    expect(cropOf('mustard')?.binomial).toBe('Sinapis alba');
    expect(cropOf('new-zealand-spinach')?.binomial).toBe('Tetragonia tetragonioides');
  });
});
