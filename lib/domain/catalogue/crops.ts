import type { CropGroup } from './crop-groups';
import type { HostGroup } from './host-groups';
import type { SourceKey } from './sources';

/** A crop as the rotation and the ground see it. */
export type Crop = {
  readonly key: string;
  readonly name: string;
  readonly binomial: string | null;
  readonly family: string;
  readonly cropGroup: CropGroup;
  readonly hostGroups: readonly string[];
  readonly life: 'annual' | 'biennial' | 'perennial';
  /** Stands from season to season until it is cleared. */
  readonly stands: boolean;
  readonly takesManure: boolean;
};

type CatalogueCrop = Crop & { readonly hostGroups: readonly HostGroup[]; readonly familySource: SourceKey };

/**
 * The crops of the catalogue. Families: as each row says; binomials are checked against the official lists in
 * tests/published. Life in the garden, and which crops take manure when it is their turn: common practice, and sources
 * disagree on some, so a society may set its own. Long roots fork in ground manured for them.
 */
export const crops: readonly CatalogueCrop[] = [
  { key: 'summer-cabbage', name: 'Cabbage, summer', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'winter-cabbage', name: 'Cabbage, winter', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'spring-cabbage', name: 'Cabbage, spring', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'brussels-sprout', name: 'Brussels sprout', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'cauliflower', name: 'Cauliflower', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'calabrese', name: 'Calabrese', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'purple-sprouting', name: 'Purple sprouting broccoli', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'kale', name: 'Kale', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'kohlrabi', name: 'Kohlrabi', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'swede', name: 'Swede', binomial: 'Brassica napus', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'turnip', name: 'Turnip', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'chinese-cabbage', name: 'Chinese cabbage', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'pak-choi', name: 'Pak choi', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'radish', name: 'Radish', binomial: 'Raphanus sativus', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'rocket', name: 'Rocket', binomial: 'Eruca vesicaria', family: 'Brassicaceae', cropGroup: 'leaves', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'mustard-greens', name: 'Mustard greens', binomial: 'Brassica juncea', family: 'Brassicaceae', cropGroup: 'leaves', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'mizuna', name: 'Mizuna', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'leaves', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'horseradish', name: 'Horseradish', binomial: 'Armoracia rusticana', family: 'Brassicaceae', cropGroup: 'standing', hostGroups: ['brassica-kin'], life: 'perennial', stands: true, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'mustard', name: 'Mustard, green manure', binomial: 'Sinapis alba', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'pea', name: 'Peas', binomial: 'Pisum sativum', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'mangetout', name: 'Mangetout', binomial: 'Pisum sativum', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'broad-bean', name: 'Broad bean', binomial: 'Vicia faba', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'french-bean', name: 'French bean', binomial: 'Phaseolus vulgaris', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'runner-bean', name: 'Runner bean', binomial: 'Phaseolus coccineus', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'field-bean', name: 'Field bean, green manure', binomial: 'Vicia faba', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'winter-vetch', name: 'Winter vetch, green manure', binomial: 'Vicia sativa', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'clover', name: 'Clover, green manure', binomial: 'Trifolium', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'onion', name: 'Onion', binomial: 'Allium cepa', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'shallot', name: 'Shallot', binomial: 'Allium cepa', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'garlic', name: 'Garlic', binomial: 'Allium sativum', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'leek', name: 'Leek', binomial: 'Allium porrum', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'spring-onion', name: 'Spring onion', binomial: 'Allium cepa', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'welsh-onion', name: 'Welsh onion', binomial: 'Allium fistulosum', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'perennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'chives', name: 'Chives', binomial: 'Allium schoenoprasum', family: 'Amaryllidaceae', cropGroup: 'standing', hostGroups: ['allium-kin'], life: 'perennial', stands: true, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'carrot', name: 'Carrot', binomial: 'Daucus carota', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'parsnip', name: 'Parsnip', binomial: 'Pastinaca sativa', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'celery', name: 'Celery', binomial: 'Apium graveolens', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'celeriac', name: 'Celeriac', binomial: 'Apium graveolens', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'florence-fennel', name: 'Florence fennel', binomial: 'Foeniculum vulgare', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'parsley', name: 'Parsley', binomial: 'Petroselinum crispum', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'coriander', name: 'Coriander', binomial: 'Coriandrum sativum', family: 'Apiaceae', cropGroup: 'leaves', hostGroups: ['carrot-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'dill', name: 'Dill', binomial: 'Anethum graveolens', family: 'Apiaceae', cropGroup: 'leaves', hostGroups: ['carrot-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'early-potato', name: 'Potato, early', binomial: 'Solanum tuberosum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'maincrop-potato', name: 'Potato, maincrop', binomial: 'Solanum tuberosum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'tomato', name: 'Tomato', binomial: 'Solanum lycopersicum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'pepper', name: 'Pepper and chilli', binomial: 'Capsicum annuum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'aubergine', name: 'Aubergine', binomial: 'Solanum melongena', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'tomatillo', name: 'Tomatillo', binomial: 'Physalis philadelphica', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'courgette', name: 'Courgette and marrow', binomial: 'Cucurbita pepo', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'winter-squash', name: 'Winter squash', binomial: 'Cucurbita maxima', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'butternut', name: 'Butternut squash', binomial: 'Cucurbita moschata', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'cucumber', name: 'Cucumber and gherkin', binomial: 'Cucumis sativus', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'melon', name: 'Melon', binomial: 'Cucumis melo', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'beetroot', name: 'Beetroot', binomial: 'Beta vulgaris', family: 'Amaranthaceae', cropGroup: 'roots', hostGroups: ['beet-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'chard', name: 'Chard and leaf beet', binomial: 'Beta vulgaris', family: 'Amaranthaceae', cropGroup: 'leaves', hostGroups: ['beet-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'spinach', name: 'Spinach', binomial: 'Spinacia oleracea', family: 'Amaranthaceae', cropGroup: 'leaves', hostGroups: ['beet-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'lettuce', name: 'Lettuce', binomial: 'Lactuca sativa', family: 'Asteraceae', cropGroup: 'leaves', hostGroups: ['lettuce-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'endive', name: 'Endive', binomial: 'Cichorium endivia', family: 'Asteraceae', cropGroup: 'leaves', hostGroups: ['lettuce-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'chicory', name: 'Chicory', binomial: 'Cichorium intybus', family: 'Asteraceae', cropGroup: 'leaves', hostGroups: ['lettuce-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'salsify', name: 'Salsify', binomial: 'Tragopogon porrifolius', family: 'Asteraceae', cropGroup: 'roots', hostGroups: ['lettuce-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'scorzonera', name: 'Scorzonera', binomial: 'Scorzonera hispanica', family: 'Asteraceae', cropGroup: 'roots', hostGroups: ['lettuce-kin'], life: 'perennial', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'jerusalem-artichoke', name: 'Jerusalem artichoke', binomial: 'Helianthus tuberosus', family: 'Asteraceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'globe-artichoke', name: 'Globe artichoke', binomial: 'Cynara cardunculus', family: 'Asteraceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'lambs-lettuce', name: 'Lamb’s lettuce', binomial: 'Valerianella locusta', family: 'Caprifoliaceae', cropGroup: 'leaves', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'winter-purslane', name: 'Winter purslane', binomial: 'Claytonia perfoliata', family: 'Montiaceae', cropGroup: 'leaves', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'new-zealand-spinach', name: 'New Zealand spinach', binomial: 'Tetragonia tetragonoides', family: 'Aizoaceae', cropGroup: 'leaves', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'sweetcorn', name: 'Sweetcorn', binomial: 'Zea mays', family: 'Poaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'grazing-rye', name: 'Grazing rye, green manure', binomial: 'Secale cereale', family: 'Poaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'phacelia', name: 'Phacelia, green manure', binomial: 'Phacelia tanacetifolia', family: 'Boraginaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'buckwheat', name: 'Buckwheat, green manure', binomial: 'Fagopyrum esculentum', family: 'Polygonaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'rhubarb', name: 'Rhubarb', binomial: 'Rheum × hybridum', family: 'Polygonaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'asparagus', name: 'Asparagus', binomial: 'Asparagus officinalis', family: 'Asparagaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland' },
  { key: 'sweet-potato', name: 'Sweet potato', binomial: 'Ipomoea batatas', family: 'Convolvulaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: false, takesManure: false, familySource: 'cornell-cortland' },
  { key: 'oca', name: 'Oca', binomial: 'Oxalis tuberosa', family: 'Oxalidaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: false, takesManure: false, familySource: 'from-memory' },
  { key: 'strawberry', name: 'Strawberry', binomial: 'Fragaria × ananassa', family: 'Rosaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland' },
];

const byKey = new Map(crops.map((crop) => [crop.key, crop]));

/** A crop of the catalogue by its key; undefined where it has none. */
export function cropOf(key: string): Crop | undefined {
  return byKey.get(key);
}
