import type { HostGroup } from './host-groups';
import type { SourceKey } from './sources';

/** How hard a trouble is on a crop, and so how heavily its break weighs: spoils some of it, most of it, or the ground itself. */
export type Severity = 'light' | 'serious' | 'grave';

export type TroubleKey =
  | 'clubroot'
  | 'cabbage-yellows'
  | 'blackleg'
  | 'black-rot'
  | 'white-rot'
  | 'basal-rot'
  | 'onion-eelworm'
  | 'bean-eelworm'
  | 'potato-eelworm'
  | 'beet-eelworm'
  | 'white-mould'
  | 'bottom-rot'
  | 'pea-foot-rot'
  | 'bean-anthracnose'
  | 'cavity-spot'
  | 'parsnip-canker'
  | 'beet-leaf-spot'
  | 'beet-root-rot'
  | 'scab'
  | 'verticillium'
  | 'cucumber-scab';

/** A trouble that lives in the soil, and the clear years without any host that it wants where it has been found. */
export type Trouble = {
  readonly key: TroubleKey;
  readonly name: string;
  readonly organism: string;
  /** Every host group that feeds it: a break is a break only when all of them stay away. */
  readonly hosts: readonly HostGroup[];
  /** Whole clear years; null: no break clears it. Where a source gives a range, its longer end. */
  readonly clearYears: number | null;
  readonly severity: Severity;
  /** It travels in soil on boots, tools and plants' roots. */
  readonly travelsInSoil: boolean;
  readonly source: SourceKey;
  /** What other sources say, for the society to decide by. */
  readonly otherwise: readonly { readonly clearYears: number | null; readonly source: SourceKey }[];
};

// biome-ignore format: one trouble a line
export const troubles: readonly Trouble[] = [
  { key: 'clubroot', name: 'Clubroot', organism: 'Plasmodiophora brassicae', hosts: ['brassica-kin'], clearYears: 7, severity: 'grave', travelsInSoil: true, source: 'uconn-rotation', otherwise: [{ clearYears: 8, source: 'bayer-clubroot' }, { clearYears: 5, source: 'soil-association' }] },
  { key: 'cabbage-yellows', name: 'Fusarium yellows', organism: 'Fusarium oxysporum f. sp. conglutinans', hosts: ['brassica-kin'], clearYears: 7, severity: 'serious', travelsInSoil: true, source: 'common-practice', otherwise: [] },
  { key: 'blackleg', name: 'Blackleg of brassicas', organism: 'Phoma lingam', hosts: ['brassica-kin'], clearYears: 4, severity: 'serious', travelsInSoil: false, source: 'uconn-rotation', otherwise: [{ clearYears: 3, source: 'uconn-rotation' }] },
  { key: 'black-rot', name: 'Black rot of brassicas', organism: 'Xanthomonas campestris', hosts: ['brassica-kin'], clearYears: 3, severity: 'serious', travelsInSoil: false, source: 'uconn-rotation', otherwise: [{ clearYears: 2, source: 'uconn-rotation' }] },
  { key: 'white-rot', name: 'Onion white rot', organism: 'Stromatinia cepivora', hosts: ['allium-kin'], clearYears: null, severity: 'grave', travelsInSoil: true, source: 'uc-ipm-onion', otherwise: [{ clearYears: 8, source: 'from-memory' }] },
  { key: 'basal-rot', name: 'Fusarium basal rot', organism: 'Fusarium oxysporum f. sp. cepae', hosts: ['allium-kin'], clearYears: 4, severity: 'serious', travelsInSoil: true, source: 'uc-ipm-onion', otherwise: [{ clearYears: 2, source: 'manitoba-onion' }] },
  { key: 'onion-eelworm', name: 'Stem and bulb eelworm', organism: 'Ditylenchus dipsaci', hosts: ['allium-kin', 'carrot-kin', 'beet-kin', 'legume-kin'], clearYears: 3, severity: 'serious', travelsInSoil: true, source: 'omafra', otherwise: [] },
  { key: 'bean-eelworm', name: 'Stem eelworm of beans', organism: 'Ditylenchus gigas', hosts: ['legume-kin'], clearYears: 10, severity: 'serious', travelsInSoil: true, source: 'pgro-36', otherwise: [] },
  { key: 'potato-eelworm', name: 'Potato cyst eelworm', organism: 'Globodera', hosts: ['potato-kin'], clearYears: 6, severity: 'grave', travelsInSoil: true, source: 'rhs-929', otherwise: [{ clearYears: 5, source: 'rhs-929' }] },
  { key: 'beet-eelworm', name: 'Beet cyst eelworm', organism: 'Heterodera schachtii', hosts: ['beet-kin', 'brassica-kin'], clearYears: 4, severity: 'serious', travelsInSoil: true, source: 'from-memory', otherwise: [] },
  { key: 'white-mould', name: 'White mould', organism: 'Sclerotinia', hosts: ['legume-kin', 'potato-kin', 'lettuce-kin', 'brassica-kin'], clearYears: 5, severity: 'serious', travelsInSoil: true, source: 'pnw-lettuce', otherwise: [{ clearYears: 3, source: 'uc-ipm-lettuce' }] },
  { key: 'bottom-rot', name: 'Bottom rot and drop of lettuce', organism: 'Rhizoctonia solani', hosts: ['lettuce-kin'], clearYears: 3, severity: 'light', travelsInSoil: true, source: 'uconn-rotation', otherwise: [] },
  { key: 'pea-foot-rot', name: 'Pea foot rots', organism: 'Aphanomyces, Fusarium solani, Didymella', hosts: ['legume-kin'], clearYears: 10, severity: 'serious', travelsInSoil: true, source: 'pgro-foot-rot', otherwise: [{ clearYears: 5, source: 'oyarzun' }] },
  { key: 'bean-anthracnose', name: 'Bean anthracnose and blight', organism: 'Colletotrichum; Pseudomonas', hosts: ['legume-kin'], clearYears: 2, severity: 'light', travelsInSoil: false, source: 'uconn-rotation', otherwise: [] },
  { key: 'cavity-spot', name: 'Cavity spot', organism: 'Pythium violae, P. sulcatum', hosts: ['carrot-kin'], clearYears: 2, severity: 'light', travelsInSoil: true, source: 'utah-carrot', otherwise: [] },
  { key: 'parsnip-canker', name: 'Parsnip canker', organism: 'Itersonilia', hosts: ['carrot-kin'], clearYears: 1, severity: 'light', travelsInSoil: false, source: 'bc-vegetables', otherwise: [] },
  { key: 'beet-leaf-spot', name: 'Leaf spot of beet', organism: 'Cercospora beticola', hosts: ['beet-kin'], clearYears: 3, severity: 'light', travelsInSoil: false, source: 'uconn-rotation', otherwise: [] },
  { key: 'beet-root-rot', name: 'Root rot of beet', organism: 'Rhizoctonia', hosts: ['beet-kin'], clearYears: 3, severity: 'serious', travelsInSoil: true, source: 'crystal-sugar-334', otherwise: [] },
  { key: 'scab', name: 'Common scab', organism: 'Streptomyces', hosts: ['potato-kin', 'beet-kin', 'carrot-kin'], clearYears: 4, severity: 'light', travelsInSoil: true, source: 'from-memory', otherwise: [{ clearYears: 3, source: 'from-memory' }] },
  { key: 'verticillium', name: 'Verticillium wilt', organism: 'Verticillium dahliae', hosts: ['potato-kin', 'cucurbit-kin'], clearYears: 7, severity: 'serious', travelsInSoil: true, source: 'negev-verticillium', otherwise: [] },
  { key: 'cucumber-scab', name: 'Scab of cucurbits', organism: 'Cladosporium cucumerinum', hosts: ['cucurbit-kin'], clearYears: 2, severity: 'light', travelsInSoil: false, source: 'uconn-rotation', otherwise: [] },
];

const byKey = new Map<string, Trouble>(troubles.map((trouble) => [trouble.key, trouble]));

/** A trouble by its key; undefined where there is none. */
export function troubleOf(key: string): Trouble | undefined {
  return byKey.get(key);
}

/** A trouble's word on the screen. */
export function troubleName(key: string): string {
  return byKey.get(key)?.name ?? key;
}
