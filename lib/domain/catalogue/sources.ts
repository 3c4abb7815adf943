/** Where a value comes from. Every row of the catalogue names one of these. */
export type Source = {
  readonly publisher: string;
  readonly title: string;
  readonly year: string;
  readonly table: string;
};

export type Standing = 'published' | 'common practice' | 'from memory';

// biome-ignore format: one source a line
export const sources = {
  'cornell-cortland': { publisher: 'Cornell Cooperative Extension, Cortland County', title: 'Rotating Vegetables by Family', year: '2021', table: 'family list' },
  'eu-2002-55': { publisher: 'European Union', title: 'Directive 2002/55/EC on the marketing of vegetable seed', year: '2002', table: 'Article 2(1)(b), as transposed in Germany' },
  'canada-seeds': { publisher: 'Canada', title: 'Seeds Regulations, C.R.C., c. 1400', year: '2025', table: 'Schedule I, Tables XVI to XX' },
  ecocrop: { publisher: 'FAO', title: 'EcoCrop database', year: 'undated', table: 'scientific names' },
  'species-lists': { publisher: 'FAO, Canada and Germany', title: 'EcoCrop, World Census of Agriculture 2020, Seeds Regulations or Artenverzeichnis', year: 'various', table: 'at least one of the four' },
  'uconn-rotation': { publisher: 'University of Connecticut', title: 'Having Problems Controlling Vegetable Crop Diseases: Try Rotation', year: 'undated', table: 'rotation periods suggested' },
  'uc-ipm-onion': { publisher: 'University of California IPM', title: 'Pest management guidelines: onion and garlic', year: 'undated', table: 'Fusarium basal rot; white rot' },
  omafra: { publisher: 'Ontario Ministry of Agriculture', title: 'Bulb and stem nematode in onions and carrots', year: 'undated', table: 'management' },
  'pgro-36': { publisher: 'Processors and Growers Research Organisation', title: 'Practice Abstract 36', year: '2020', table: 'stem nematode' },
  'rhs-929': { publisher: 'Royal Horticultural Society', title: 'Potato cyst eelworm, advice profile 929', year: 'undated', table: 'control' },
  'bayer-clubroot': { publisher: 'Bayer Crop Science UK', title: 'Clubroot, brassicas', year: 'undated', table: 'rotation' },
  'soil-association': { publisher: 'Soil Association, adviser', title: 'as reported in the press: at least a six-year rotation', year: 'undated', table: 'clubroot' },
  'manitoba-onion': { publisher: 'University of Manitoba', title: 'Fusarium basal rot of onion', year: 'undated', table: 'rotation of three years' },
  'pnw-lettuce': { publisher: 'Pacific Northwest Plant Disease Management Handbook', title: 'Lettuce, Sclerotinia', year: 'undated', table: 'survival of sclerotia' },
  'uc-ipm-lettuce': { publisher: 'University of California IPM', title: 'Pest management guidelines: lettuce', year: 'undated', table: 'survival of sclerotia' },
  'pgro-foot-rot': { publisher: 'Processors and Growers Research Organisation', title: 'Technical Update 34, pea foot rots', year: '2025', table: 'resting spores' },
  oyarzun: { publisher: 'Oyarzun et al.', title: 'Netherlands Journal of Plant Pathology 99: 35–44', year: '1993', table: 'abstract: one pea crop in six years' },
  'utah-carrot': { publisher: 'Utah State University Extension', title: 'Cavity spot', year: 'undated', table: 'rotate every three years' },
  'bc-vegetables': { publisher: 'British Columbia', title: 'Vegetable Production Guide', year: '2021', table: 'parsnip canker' },
  'negev-verticillium': { publisher: 'study in the Negev, abstract', title: 'Survival of Verticillium dahliae under non-hosts', year: 'undated', table: '4 % alive after seven years' },
  wallenhammar: { publisher: 'Wallenhammar', title: 'Monitoring and control of Plasmodiophora brassicae in spring oilseed brassica crops, abstract', year: 'undated', table: 'half-life 3.6 years; 17.3 years to below detection' },
  'canola-council': { publisher: 'Canola Council agronomist, in Alberta Farmer Express', title: 'light infestations over a two-year break', year: '2018', table: '95 to 99 % of spores' },
  'pcn-thesis': { publisher: 'thesis, core.ac.uk works 8061926', title: 'Natural decline of potato cyst nematodes, 45 UK populations', year: 'undated', table: 'abstract' },
  'sasa-pcn': { publisher: 'Science and Advice for Scottish Agriculture, as quoted', title: 'Potato cyst nematode', year: 'undated', table: 'survival of eggs' },
  westerdahl: { publisher: 'Westerdahl, UC Davis', title: 'Nematology course page', year: 'undated', table: 'decline of beet cyst nematode, England and San Joaquin' },
  'eelworm-dormant': { publisher: 'growers’ page', title: 'Stem and bulb eelworm, dormant juveniles', year: 'undated', table: 'up to five years' },
  'allotment-guide-1945': { publisher: 'Ministry of Agriculture', title: 'Allotment and Garden Guide, vol. 1 no. 2', year: '1945', table: 'three-year plan, pp. 4–5' },
  'rb209-manure': { publisher: 'AHDB', title: 'Nutrient Management Guide (RB209), Section 2: farmyard manure', year: 'undated', table: 'total nitrogen, fresh weight' },
  'crystal-sugar-334': { publisher: 'American Crystal Sugar Company', title: 'Ag Note 334', year: 'undated', table: 'rotation and years between crops' },
  hoduflu: { publisher: 'Swiss Federal Office for Agriculture', title: 'Gehaltstabelle HODUFLU', year: '2024', table: 'solid manures' },
  'composting-materials': { publisher: 'copy of a table of composting materials', title: 'Characteristics of common composting materials', year: '2008', table: 'bulk density' },
  thrive: { publisher: 'Thrive', title: 'Feeding your soil', year: 'undated', table: 'dressing of manure' },
  rhs: { publisher: 'Royal Horticultural Society', title: 'Alternatives to fertiliser', year: 'undated', table: 'rates' },
  'weights-1985': { publisher: 'United Kingdom', title: 'Weights and Measures Act 1985', year: '1985', table: 'Schedule 1' },
  'common-practice': { publisher: 'common practice', title: '', year: '', table: '' },
  'from-memory': { publisher: 'from memory', title: '', year: '', table: '' },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;

/** How far a value may be relied on, from where it comes. */
export function standingOf(key: SourceKey): Standing {
  if (key === 'common-practice') return 'common practice';
  return key === 'from-memory' ? 'from memory' : 'published';
}

/** A source in one line: publisher, title, year. */
export function citation(key: SourceKey): string {
  const { publisher, title, year }: Source = sources[key];
  return [publisher, title, year].filter(Boolean).join(', ');
}
