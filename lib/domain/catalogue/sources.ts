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
  'rhs-rotation': { publisher: 'Royal Horticultural Society', title: 'Crop rotation, advice', year: '2025', table: 'crops outside the rotation' },
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
  'allotment-guide-1945-beans': { publisher: 'Ministry of Agriculture', title: 'Allotment and Garden Guide, vol. 1 no. 2', year: '1945', table: 'beans, pp. 6 and 8' },
  'hills-course': { publisher: 'L. D. Hills, as summarised', title: 'Organic Gardening', year: '1970s', table: 'four-year course, manure before potatoes' },
  'humphries-course': { publisher: 'J. Humphries, in Wales Online', title: 'three-year course', year: 'undated', table: 'manure, lime or fertiliser by third' },
  'rb209-manure': { publisher: 'AHDB', title: 'Nutrient Management Guide (RB209), Section 2: farmyard manure', year: 'undated', table: 'total nitrogen, fresh weight' },
  'rb209-manure-2010': { publisher: 'Defra', title: 'Fertiliser Manual (RB209), 8th edition', year: '2010', table: 'farmyard manure, total nitrogen' },
  'rb209-available': { publisher: 'AHDB', title: 'Nutrient Management Guide (RB209), Section 2: farmyard manure', year: 'undated', table: 'percent of total nitrogen available to the next crop' },
  'rb209-vegetables': { publisher: 'Defra', title: 'Fertiliser Manual (RB209), 8th edition', year: '2010', table: 'Section 5, checklist for vegetables' },
  'rb209-potatoes': { publisher: 'Defra', title: 'Fertiliser Manual (RB209), 8th edition', year: '2010', table: 'potatoes: phosphate, potash, magnesium' },
  'earth-kind': { publisher: 'Texas A&M AgriLife Extension', title: 'Earth-Kind gardening: organic fertilisers', year: 'undated', table: 'nutrients of manures and meals' },
  'lpelc-horse': { publisher: 'Livestock and Poultry Environmental Learning Center', title: 'Equine manure', year: 'undated', table: 'bedded manure, after Wheeler 2006' },
  'wrap-compost': { publisher: 'WRAP', title: 'Compost for potatoes', year: 'undated', table: 'dressings that bring 250 kg of nitrogen a hectare' },
  'agnew-leonard': { publisher: 'Agnew and Leonard, as cited', title: 'Physical properties of compost', year: '2003', table: 'bulk density, wet' },
  'owen-1953': { publisher: 'Owen, Winsor and Long', title: 'Journal of the Science of Food and Agriculture 4', year: '1953', table: 'abstract: nitrogen of hoof and horn and its release in ten weeks' },
  'fao-feeds': { publisher: 'FAO', title: 'S4314E, Appendix XI', year: 'undated', table: 'bulk densities of meals and of limestone' },
  'duev-vegetables': { publisher: 'Germany', title: 'Düngeverordnung', year: '2017, as of 2021', table: 'Anlage 4, Tabelle 4' },
  'duev-arable': { publisher: 'Germany', title: 'Düngeverordnung', year: '2017, as of 2021', table: 'Anlage 4, Tabelle 2; Anlage 7, Tabelle 1' },
  'duev-contents': { publisher: 'Germany', title: 'Düngeverordnung', year: '2017, as of 2021', table: 'Anlage 7, Tabelle 2' },
  'duev-efficiency': { publisher: 'Germany', title: 'Düngeverordnung', year: '2017, as of 2021', table: 'Anlage 3, least efficiency in the year of application' },
  'duev-last-year': { publisher: 'Germany', title: 'Düngeverordnung', year: '2017, as of 2021', table: '§ 4(1) no. 5' },
  'nvz-hectare': { publisher: 'United Kingdom', title: 'Nitrate Pollution Prevention Regulations 2015, SI 2015/668', year: '2015', table: 'regulation 8(1)' },
  'nvz-crops': { publisher: 'GOV.UK', title: 'Using nitrogen fertilisers in nitrate vulnerable zones', year: 'undated', table: 'most nitrogen by crop' },
  'crystal-sugar-334': { publisher: 'American Crystal Sugar Company', title: 'Ag Note 334', year: 'undated', table: 'rotation and years between crops' },
  hoduflu: { publisher: 'Swiss Federal Office for Agriculture', title: 'Gehaltstabelle HODUFLU', year: '2024', table: 'solid manures' },
  'composting-materials': { publisher: 'copy of a table of composting materials', title: 'Characteristics of common composting materials', year: '2008', table: 'bulk density' },
  thrive: { publisher: 'Thrive', title: 'Feeding your soil', year: 'undated', table: 'dressing of manure' },
  rhs: { publisher: 'Royal Horticultural Society', title: 'Alternatives to fertiliser', year: 'undated', table: 'rates' },
  'rhs-double-digging': { publisher: 'Royal Horticultural Society', title: 'Double digging', year: 'undated', table: 'width of a trench, manure' },
  'how-to-dig': { publisher: 'Ministry of Agriculture', title: 'Dig for Victory Leaflet No. 20 (New Series), How to Dig', year: 'undated', table: 'single digging; ground wider than 15 ft' },
  'commercial-gardening': { publisher: 'Commercial Gardening', title: 'Volume 1: Digging', year: 'about 1913', table: 'rods and tons a day' },
  'alaska-swell': { publisher: 'Alaska Department of Transportation, as compiled on a page of bulking factors', title: 'Swell of excavated ground', year: '1983', table: 'sand, silt, clay' },
  'estimating-swell': { publisher: 'construction-estimating text', title: 'Swell of excavated ground', year: 'undated', table: 'Fig. 9.1' },
  'usda-roots': { publisher: 'USDA Natural Resources Conservation Service, as relayed by a college', title: 'Bulk density and the growth of roots', year: 'undated', table: 'sandy, silty, clayey' },
  'lpelc-density': { publisher: 'Livestock and Poultry Environmental Learning Center', title: 'Estimating Manure Density', year: 'undated', table: 'at least five buckets' },
  'alberta-manure': { publisher: 'Alberta Agriculture', title: 'Nutrient Management Planning Guide (Agdex 400/28-3)', year: 'undated', table: 'pp. 124, 126–127: size of a heap; ten to twenty pails, not pressed down' },
  'weights-1985': { publisher: 'United Kingdom', title: 'Weights and Measures Act 1985', year: '1985', table: 'Schedule 1' },
  'za-lime': { publisher: 'South Africa, National Department of Agriculture', title: 'Application of lime to soil', year: '2000', table: 'lime by texture, pH 4.5 to 5.5 and 5.5 to 6.5' },
  'uk-lime-guide': { publisher: 'farm adviser, in a buying group’s page', title: 'Lime Time', year: 'undated', table: 'rough guide, arable' },
  'iung-lime': { publisher: 'Institute of Soil Science and Plant Cultivation (IUNG), Poland', title: 'Assessment of liming demands', year: 'undated', table: 'Tables 1 and 2' },
  'teagasc-lime': { publisher: 'Teagasc', title: 'Calculating Lime Advice', year: '2023', table: 'lime from the buffer pH' },
  'teagasc-slurry': { publisher: 'Teagasc', title: 'It’s Time for Lime', year: 'undated', table: 'lime with slurry or urea' },
  'irish-lime-most': { publisher: 'Irish Farmers Monthly, after Teagasc', title: 'Forage Guide 2018', year: '2018', table: 'most in one dressing' },
  'rhs-lime': { publisher: 'Royal Horticultural Society', title: 'Lime and liming', year: 'undated', table: 'when to test' },
  'nop-manure': { publisher: 'United States, National Organic Program', title: '7 CFR 205.203', year: '2026', table: '(c)(1) raw manure; (c)(2) compost' },
  'fsa-earlier': { publisher: 'Food Standards Agency, in a Defra summary', title: 'Managing farm manures for food safety, earlier guidance', year: 'undated', table: 'crops that are ready to eat' },
  'rhs-rotting': { publisher: 'Royal Horticultural Society', title: 'Alternatives to fertiliser', year: 'undated', table: 'how long to rot manure' },
  'rhs-weedkiller': { publisher: 'Royal Horticultural Society', title: 'Weedkiller in manure', year: 'undated', table: 'advice profile 477' },
  'osu-bioassay': { publisher: 'Oregon State University, as relayed', title: 'Bioassay for weedkiller residue in manure', year: 'undated', table: 'pots, mix and readings' },
  'ncsu-bioassay': { publisher: 'North Carolina State University, as relayed', title: 'Bioassay for weedkiller residue in manure', year: 'undated', table: 'pots, mix and readings' },
  'calrecycle-bioassay': { publisher: 'CalRecycle', title: 'Bioassays for Detecting Clopyralid Residues', year: 'undated', table: 'Washington protocol; false positives' },
  'composting-solid': { publisher: 'Saskatchewan Agriculture, as copied', title: 'Composting Solid Manure', year: 'reviewed 2008', table: 'loss of volume' },
  'chen-dairy': { publisher: 'L. Chen, University of Idaho, in a trade magazine', title: 'Composting dairy manure', year: 'undated', table: 'loss of volume' },
  'michel-2004': { publisher: 'Michel et al., American Society of Agricultural Engineers', title: 'Paper 044030', year: '2004', table: 'abstract: stable after 100 days' },
  'farmers-journal-straw': { publisher: 'Irish Farmers Journal', title: 'Straw budgeting', year: 'undated', table: 'weights of bales' },
  iirr: { publisher: 'International Institute of Rural Reconstruction', title: 'Bio-intensive Approach to Small-scale Household Food Production', year: '1993', table: 'deep-dug bed: 2 to 6 hours for 9 m²' },
  'compendium-2011': { publisher: 'Ainsworth et al., Medicine and Science in Sports and Exercise 43', title: '2011 Compendium of Physical Activities', year: '2011', table: 'lawn and garden, by code' },
  'compendium-2024': { publisher: 'Herrmann et al., Journal of Sport and Health Science 13', title: '2024 Adult Compendium of Physical Activities', year: '2024', table: 'abstract: for adults of 19 to 59 years' },
  murrell: { publisher: 'Murrell, as taught by Freivalds', title: 'Human Performance in Industry', year: '1965', table: 'rest from energy' },
  'niosh-1981': { publisher: 'NIOSH, as cited', title: 'Work Practices Guide for Manual Lifting', year: '1981', table: 'limits for eight hours; what cannot be predicted for one person' },
  'ergonomics-lectures': { publisher: 'lectures on ergonomics, after Wickens', title: 'Work-rest problems', year: 'undated', table: 'limit of 4 kcal/min' },
  'acgih-1992': { publisher: 'ACGIH', title: 'Assessment of workload, additive table', year: '1992', table: 'standard worker of 70 kg' },
  ace: { publisher: 'American Council on Exercise', title: 'What formula for calculating energy expenditure', year: 'undated', table: 'calories a minute from METs' },
  ccohs: { publisher: 'Canadian Centre for Occupational Health and Safety, as relayed', title: 'Shovelling', year: 'undated', table: 'rate, weight, rest, warming up' },
  'hse-filters': { publisher: 'Health and Safety Executive, as reprinted', title: 'Manual handling at work, INDG143 and L23', year: 'undated', table: 'risk filters' },
  'rhs-compost-safety': { publisher: 'Royal Horticultural Society', title: 'Advice on potting compost', year: '2010', table: 'Legionella' },
  aspergillosis: { publisher: 'National Aspergillosis site, as relayed', title: 'aspergillosis and handling compost', year: 'undated', table: 'who should keep away; masks' },
  'fsa-manure': { publisher: 'Food Standards Agency', title: 'Managing farm manures for food safety', year: '2009', table: 'what manure can carry' },
  'cdc-gardening': { publisher: 'Centers for Disease Control and Prevention, as relayed', title: 'Gardening health and safety tips', year: '2014', table: 'tetanus' },
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
