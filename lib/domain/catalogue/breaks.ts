import type { HostGroup } from './host-groups';
import type { SourceKey } from './sources';

/** A trouble of the soil, and the clear years it wants where it has been found. Null: no break clears it. */
export type TroubleBreak = {
  readonly key: string;
  readonly name: string;
  readonly hostGroup: HostGroup;
  readonly clearYears: number | null;
  readonly source: SourceKey;
};

/** The longer breaks that were read as clear years in their own sources. Where a range is given, its longer end. */
export const troubleBreaks: readonly TroubleBreak[] = [
  { key: 'clubroot', name: 'Clubroot', hostGroup: 'brassica-kin', clearYears: 7, source: 'uconn-rotation' },
  { key: 'black-rot', name: 'Black rot', hostGroup: 'brassica-kin', clearYears: 3, source: 'uconn-rotation' },
  { key: 'blackleg', name: 'Blackleg', hostGroup: 'brassica-kin', clearYears: 4, source: 'uconn-rotation' },
  { key: 'white-rot', name: 'Onion white rot', hostGroup: 'allium-kin', clearYears: null, source: 'uc-ipm-onion' },
  { key: 'basal-rot', name: 'Fusarium basal rot', hostGroup: 'allium-kin', clearYears: 4, source: 'uc-ipm-onion' },
  {
    key: 'onion-eelworm',
    name: 'Stem and bulb eelworm, onions',
    hostGroup: 'allium-kin',
    clearYears: 3,
    source: 'omafra',
  },
  {
    key: 'bean-eelworm',
    name: 'Stem and bulb eelworm, beans',
    hostGroup: 'legume-kin',
    clearYears: 10,
    source: 'pgro-36',
  },
  { key: 'potato-eelworm', name: 'Potato cyst eelworm', hostGroup: 'potato-kin', clearYears: 6, source: 'rhs-929' },
  { key: 'bottom-rot', name: 'Bottom rot and drop', hostGroup: 'lettuce-kin', clearYears: 3, source: 'uconn-rotation' },
  {
    key: 'beet-leaf-spot',
    name: 'Cercospora leaf spot',
    hostGroup: 'beet-kin',
    clearYears: 3,
    source: 'uconn-rotation',
  },
];

/** A trouble's break by its key; undefined where there is none. */
export function troubleBreakOf(key: string): TroubleBreak | undefined {
  return troubleBreaks.find((row) => row.key === key);
}
