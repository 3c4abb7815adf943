import type { CropGroup } from './crop-groups';
import type { Crop } from './crops';
import type { HostGroup } from './host-groups';

/** A crop group as it stands on the board before its crop is settled, with the host groups that most of it belongs to. */
type Unsettled = {
  readonly group: Exclude<CropGroup, 'standing'>;
  readonly name: string;
  readonly hosts: readonly HostGroup[];
  readonly takesManure: boolean;
};

// The main host groups of each, and whether it takes manure when it is its turn: common practice.
const unsettled: readonly Unsettled[] = [
  { group: 'alliums', name: 'Alliums', hosts: ['allium-kin'], takesManure: true },
  { group: 'brassicas', name: 'Brassicas', hosts: ['brassica-kin'], takesManure: true },
  { group: 'legumes', name: 'Legumes', hosts: ['legume-kin'], takesManure: false },
  { group: 'roots', name: 'Roots', hosts: ['carrot-kin', 'beet-kin'], takesManure: false },
  { group: 'potatoes', name: 'Potatoes and kin', hosts: ['potato-kin'], takesManure: true },
  { group: 'cucurbits', name: 'Cucurbits', hosts: ['cucurbit-kin'], takesManure: true },
  { group: 'leaves', name: 'Leaves', hosts: ['lettuce-kin'], takesManure: true },
];

/** Each rotating group as something that can be planned: its key is the group's, its crop is settled later. */
export const groupCrops: readonly Crop[] = unsettled.map(({ group, name, hosts, takesManure }) => ({
  key: group,
  name: `${name}, any`,
  binomial: null,
  family: '',
  cropGroup: group,
  hostGroups: hosts,
  life: 'annual',
  stands: false,
  takesManure,
}));
