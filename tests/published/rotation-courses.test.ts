import { describe, expect, it } from 'vitest';
import { cropOf } from '@/lib/domain/catalogue/crops';
import { clearYearsOfRotation } from '@/lib/domain/catalogue/host-groups';
import { footprint } from '@/lib/domain/ground/footprint';
import { judge } from '@/lib/domain/rotation/judge';
import type { RecordedPlanting } from '@/lib/domain/rotation/recorded-planting';

// Eight-course rotation. E. Coleman, The New Organic Grower, Chelsea Green, order of courses as reprinted in an extension
// bulletin's figure 4: potatoes, squash, roots, beans, tomatoes, peas, cabbage family, sweetcorn, and round again.
const eightCourse = [
  'maincrop-potato',
  'winter-squash',
  'carrot',
  'runner-bean',
  'tomato',
  'pea',
  'winter-cabbage',
  'sweetcorn',
];

const bed = footprint(0, 0, 120, 360);

function years(course: readonly string[], count: number): RecordedPlanting[] {
  return Array.from({ length: count }, (_, at) => {
    const key = course[at % course.length] ?? '';
    const crop = cropOf(key);
    if (!crop) throw new Error(`the catalogue lacks ${key}`);
    return {
      id: `y${at}`,
      footprint: bed,
      cropKey: key,
      hostGroups: crop.hostGroups,
      cropGroup: crop.cropGroup,
      firstSeason: 2000 + at,
      lastSeason: 2000 + at,
    };
  });
}

function verdicts(course: readonly string[], breakYears: Record<string, number>) {
  const stood = years(course, 3 * course.length);
  const settings = { breakYears, edgeWidthCm: 30, edgeSharePercent: 5 };
  // From the second time round, so that every break is on record.
  return stood
    .slice(course.length)
    .map(
      ({ hostGroups, firstSeason }) =>
        judge({ proposal: { footprint: bed, hostGroups, season: firstSeason }, history: stood, settings }).verdict,
    );
}

describe('the published eight-course rotation', () => {
  // Potatoes and tomatoes are four years apart each way, which the source gives as its reason: three clear years. Beans and peas
  // follow after two years, one clear year between. The others come back after eight.
  const ownBreaks = { 'potato-kin': 3, 'legume-kin': 1, 'cucurbit-kin': 7, 'carrot-kin': 7, 'brassica-kin': 7 };

  it('keeps its own breaks on every bed and in every year', () => {
    expect(new Set(verdicts(eightCourse, ownBreaks))).toEqual(new Set(['kept', 'outside']));
  });

  it('falls short when tomatoes change places with beans', () => {
    const moved = [
      'maincrop-potato',
      'winter-squash',
      'carrot',
      'tomato',
      'runner-bean',
      'pea',
      'winter-cabbage',
      'sweetcorn',
    ];
    expect(verdicts(moved, ownBreaks)).toContain('short');
  });

  it('falls short of one year more for the potato family', () => {
    expect(verdicts(eightCourse, { ...ownBreaks, 'potato-kin': 4 })).toContain('short');
  });
});

describe('published courses of three, four and five years', () => {
  const { potatoes, legumes, onions, roots, brassicas, squash } = {
    potatoes: 'maincrop-potato',
    legumes: 'runner-bean',
    onions: 'onion',
    roots: 'carrot',
    brassicas: 'winter-cabbage',
    squash: 'winter-squash',
  };
  it.each([
    // Ministry of Agriculture, Allotment and Garden Guide, vol. 1 no. 2, February 1945, pp. 4–5: potatoes; peas and beans; greens.
    ['three years, the Ministry’s', [potatoes, legumes, brassicas]],
    // J. Humphries, Wales Online: legumes with onions; brassicas; roots and potatoes.
    ['three years, legumes first', [legumes, brassicas, roots]],
    // Royal Horticultural Society, plan as reproduced on an allotment page: potatoes; onions and roots; brassicas.
    ['three years, the RHS’s', [potatoes, onions, brassicas]],
    // L. D. Hills, Organic Gardening, 1970s, as summarised: potatoes; legumes; brassicas; roots and onions.
    ['four years, Hills’s', [potatoes, legumes, brassicas, roots]],
    // Longcroft Allotment Association: roots; potatoes; legumes; brassicas.
    ['four years, roots first', [roots, potatoes, legumes, brassicas]],
    // Longcroft Allotment Association: brassicas; peas and beans; potatoes and fruiting crops; onions; roots.
    ['five years', [brassicas, legumes, squash, onions, roots]],
  ])('%s: kept at its own breaks, short of a year more, and short where one position is put out', (_, course) => {
    const breaks = (more: number) => {
      const kins = course.flatMap((key) => cropOf(key)?.hostGroups ?? []);
      return Object.fromEntries(kins.map((kin) => [kin, clearYearsOfRotation(course.length) + more]));
    };
    expect(new Set(verdicts(course, breaks(0)))).toEqual(new Set(['kept']));
    expect(verdicts(course, breaks(1))).toContain('short');
    // In the second time round the first two change places: both come back at the wrong distance.
    const [first = '', second = ''] = course;
    const putOut = [...course, second, first, ...course.slice(2), ...course];
    expect(verdicts(putOut, breaks(0))).toContain('short');
  });
});

describe('the length of a rotation and its clear years', () => {
  // American Crystal Sugar Company, Ag Note 334, table of rotation length and years between beet crops.
  it.each([
    [2, 1],
    [3, 2],
    [4, 3],
    [5, 4],
    [8, 7],
  ])('%i years leave %i clear', (rotation, clear) => {
    expect(clearYearsOfRotation(rotation)).toBe(clear);
  });
});
