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

type CatalogueCrop = Crop & {
  readonly hostGroups: readonly HostGroup[];
  readonly familySource: SourceKey;
  readonly nameSource: SourceKey;
};

/**
 * The crops of the catalogue. Families and binomials: as each row says, and checked against the lists in tests/published.
 * Where lists differ: leek is also Allium ampeloprasum, and rhubarb Rheum rhabarbarum in EU law. Life in the garden, and which crops take manure when it is their turn: common practice, and sources
 * disagree on some, so a society may set its own. Long roots fork in ground manured for them.
 */
// biome-ignore format: one crop a line
export const crops: readonly CatalogueCrop[] = [
  { key: 'summer-cabbage', name: 'Cabbage, summer', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'winter-cabbage', name: 'Cabbage, winter', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'spring-cabbage', name: 'Cabbage, spring', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'brussels-sprout', name: 'Brussels sprout', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'cauliflower', name: 'Cauliflower', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'calabrese', name: 'Calabrese', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'purple-sprouting', name: 'Purple sprouting broccoli', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'kale', name: 'Kale', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'kohlrabi', name: 'Kohlrabi', binomial: 'Brassica oleracea', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'swede', name: 'Swede', binomial: 'Brassica napus', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'canada-seeds' },
  { key: 'turnip', name: 'Turnip', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'chinese-cabbage', name: 'Chinese cabbage', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'pak-choi', name: 'Pak choi', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'radish', name: 'Radish', binomial: 'Raphanus sativus', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'rocket', name: 'Rocket', binomial: 'Eruca vesicaria', family: 'Brassicaceae', cropGroup: 'leaves', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'from-memory' },
  { key: 'mustard-greens', name: 'Mustard greens', binomial: 'Brassica juncea', family: 'Brassicaceae', cropGroup: 'leaves', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'from-memory' },
  { key: 'mizuna', name: 'Mizuna', binomial: 'Brassica rapa', family: 'Brassicaceae', cropGroup: 'leaves', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'horseradish', name: 'Horseradish', binomial: 'Armoracia rusticana', family: 'Brassicaceae', cropGroup: 'standing', hostGroups: ['brassica-kin'], life: 'perennial', stands: true, takesManure: false, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'mustard', name: 'Mustard, green manure', binomial: 'Sinapis alba', family: 'Brassicaceae', cropGroup: 'brassicas', hostGroups: ['brassica-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'ecocrop' },
  { key: 'pea', name: 'Peas', binomial: 'Pisum sativum', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'mangetout', name: 'Mangetout', binomial: 'Pisum sativum', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'broad-bean', name: 'Broad bean', binomial: 'Vicia faba', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'french-bean', name: 'French bean', binomial: 'Phaseolus vulgaris', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'runner-bean', name: 'Runner bean', binomial: 'Phaseolus coccineus', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'field-bean', name: 'Field bean, green manure', binomial: 'Vicia faba', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'winter-vetch', name: 'Winter vetch, green manure', binomial: 'Vicia sativa', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'from-memory' },
  { key: 'clover', name: 'Clover, green manure', binomial: 'Trifolium spp.', family: 'Fabaceae', cropGroup: 'legumes', hostGroups: ['legume-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'from-memory' },
  { key: 'onion', name: 'Onion', binomial: 'Allium cepa', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'shallot', name: 'Shallot', binomial: 'Allium cepa', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'garlic', name: 'Garlic', binomial: 'Allium sativum', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'leek', name: 'Leek', binomial: 'Allium porrum', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'spring-onion', name: 'Spring onion', binomial: 'Allium cepa', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'welsh-onion', name: 'Welsh onion', binomial: 'Allium fistulosum', family: 'Amaryllidaceae', cropGroup: 'alliums', hostGroups: ['allium-kin'], life: 'perennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'chives', name: 'Chives', binomial: 'Allium schoenoprasum', family: 'Amaryllidaceae', cropGroup: 'standing', hostGroups: ['allium-kin'], life: 'perennial', stands: true, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'carrot', name: 'Carrot', binomial: 'Daucus carota', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'parsnip', name: 'Parsnip', binomial: 'Pastinaca sativa', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'celery', name: 'Celery', binomial: 'Apium graveolens', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'celeriac', name: 'Celeriac', binomial: 'Apium graveolens', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'florence-fennel', name: 'Florence fennel', binomial: 'Foeniculum vulgare', family: 'Apiaceae', cropGroup: 'roots', hostGroups: ['carrot-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'parsley', name: 'Parsley', binomial: 'Petroselinum crispum', family: 'Apiaceae', cropGroup: 'leaves', hostGroups: ['carrot-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'coriander', name: 'Coriander', binomial: 'Coriandrum sativum', family: 'Apiaceae', cropGroup: 'leaves', hostGroups: ['carrot-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'from-memory' },
  { key: 'dill', name: 'Dill', binomial: 'Anethum graveolens', family: 'Apiaceae', cropGroup: 'leaves', hostGroups: ['carrot-kin'], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'from-memory' },
  { key: 'early-potato', name: 'Potato, early', binomial: 'Solanum tuberosum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'maincrop-potato', name: 'Potato, maincrop', binomial: 'Solanum tuberosum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'tomato', name: 'Tomato', binomial: 'Solanum lycopersicum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'pepper', name: 'Pepper and chilli', binomial: 'Capsicum annuum', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'aubergine', name: 'Aubergine', binomial: 'Solanum melongena', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'perennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'tomatillo', name: 'Tomatillo', binomial: 'Physalis philadelphica', family: 'Solanaceae', cropGroup: 'potatoes', hostGroups: ['potato-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'courgette', name: 'Courgette and marrow', binomial: 'Cucurbita pepo', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'winter-squash', name: 'Winter squash', binomial: 'Cucurbita maxima', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'butternut', name: 'Butternut squash', binomial: 'Cucurbita moschata', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'from-memory' },
  { key: 'cucumber', name: 'Cucumber and gherkin', binomial: 'Cucumis sativus', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'melon', name: 'Melon', binomial: 'Cucumis melo', family: 'Cucurbitaceae', cropGroup: 'cucurbits', hostGroups: ['cucurbit-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'beetroot', name: 'Beetroot', binomial: 'Beta vulgaris', family: 'Amaranthaceae', cropGroup: 'roots', hostGroups: ['beet-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'chard', name: 'Chard and leaf beet', binomial: 'Beta vulgaris', family: 'Amaranthaceae', cropGroup: 'leaves', hostGroups: ['beet-kin'], life: 'biennial', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'spinach', name: 'Spinach', binomial: 'Spinacia oleracea', family: 'Amaranthaceae', cropGroup: 'leaves', hostGroups: ['beet-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'lettuce', name: 'Lettuce', binomial: 'Lactuca sativa', family: 'Asteraceae', cropGroup: 'leaves', hostGroups: ['lettuce-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'endive', name: 'Endive', binomial: 'Cichorium endivia', family: 'Asteraceae', cropGroup: 'leaves', hostGroups: ['lettuce-kin'], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'chicory', name: 'Chicory', binomial: 'Cichorium intybus', family: 'Asteraceae', cropGroup: 'leaves', hostGroups: ['lettuce-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'salsify', name: 'Salsify', binomial: 'Tragopogon porrifolius', family: 'Asteraceae', cropGroup: 'roots', hostGroups: ['lettuce-kin'], life: 'biennial', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'species-lists' },
  { key: 'scorzonera', name: 'Scorzonera', binomial: 'Scorzonera hispanica', family: 'Asteraceae', cropGroup: 'roots', hostGroups: ['lettuce-kin'], life: 'perennial', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'eu-2002-55' },
  { key: 'jerusalem-artichoke', name: 'Jerusalem artichoke', binomial: 'Helianthus tuberosus', family: 'Asteraceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: false, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'globe-artichoke', name: 'Globe artichoke', binomial: 'Cynara cardunculus', family: 'Asteraceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'lambs-lettuce', name: 'Lamb’s lettuce', binomial: 'Valerianella locusta', family: 'Caprifoliaceae', cropGroup: 'leaves', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'eu-2002-55' },
  { key: 'winter-purslane', name: 'Winter purslane', binomial: 'Claytonia perfoliata', family: 'Montiaceae', cropGroup: 'leaves', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'from-memory' },
  { key: 'new-zealand-spinach', name: 'New Zealand spinach', binomial: 'Tetragonia tetragonioides', family: 'Aizoaceae', cropGroup: 'leaves', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'ecocrop' },
  { key: 'sweetcorn', name: 'Sweetcorn', binomial: 'Zea mays', family: 'Poaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'grazing-rye', name: 'Grazing rye, green manure', binomial: 'Secale cereale', family: 'Poaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'phacelia', name: 'Phacelia, green manure', binomial: 'Phacelia tanacetifolia', family: 'Boraginaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'species-lists' },
  { key: 'buckwheat', name: 'Buckwheat, green manure', binomial: 'Fagopyrum esculentum', family: 'Polygonaceae', cropGroup: 'standing', hostGroups: [], life: 'annual', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'rhubarb', name: 'Rhubarb', binomial: 'Rheum × hybridum', family: 'Polygonaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland', nameSource: 'canada-seeds' },
  { key: 'asparagus', name: 'Asparagus', binomial: 'Asparagus officinalis', family: 'Asparagaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland', nameSource: 'eu-2002-55' },
  { key: 'sweet-potato', name: 'Sweet potato', binomial: 'Ipomoea batatas', family: 'Convolvulaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: false, takesManure: false, familySource: 'cornell-cortland', nameSource: 'species-lists' },
  { key: 'oca', name: 'Oca', binomial: 'Oxalis tuberosa', family: 'Oxalidaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: false, takesManure: false, familySource: 'from-memory', nameSource: 'species-lists' },
  { key: 'strawberry', name: 'Strawberry', binomial: 'Fragaria × ananassa', family: 'Rosaceae', cropGroup: 'standing', hostGroups: [], life: 'perennial', stands: true, takesManure: true, familySource: 'cornell-cortland', nameSource: 'species-lists' },
];

const byKey = new Map(crops.map((crop) => [crop.key, crop]));

/** A crop of the catalogue by its key; undefined where it has none. */
export function cropOf(key: string): Crop | undefined {
  return byKey.get(key);
}
