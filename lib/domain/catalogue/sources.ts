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
