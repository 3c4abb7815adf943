import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BedResult, type Question, questions } from './bed-result';
import { compareBeds, type Compared } from './compare-beds';
import { seasonsTold } from './seasons-told';
import { varietiesAlone } from './varieties-alone';

const unknown = { digging: null, manure: null, 'years-since': null, sowing: null, variety: null, season: '2026' };
let made = 0;
const bed = (holdingId: string, gPerM2: number, groupOf: Partial<BedResult['groupOf']>, given = {}): BedResult => ({
  ...{ holdingId, gPerM2, season: 2026, isOwn: false, isShared: true },
  plotId: `plot ${(made += 1)}`,
  groupOf: { ...unknown, ...groupOf },
  ...given,
});
const dug = (holdingId: string, gPerM2: number, given = {}) => bed(holdingId, gPerM2, { digging: 'double' }, given);
const not = (holdingId: string, gPerM2: number, given = {}) => bed(holdingId, gPerM2, { digging: 'not-double' }, given);
const keys = ({ groups }: Compared) => groups.map(({ key }) => key);

describe('beds side by side', () => {
  it('are told from three neighbours on, to two figures, by size', () => {
    const beds = [dug('a', 2_349), dug('b', 1_902), dug('c', 2_801), not('d', 1_000), not('e', 1_500), not('f', 800)];
    const { groups, contrasts, apart } = compareBeds(beds, 'digging', null);
    expect(groups).toMatchObject([
      { key: 'double', values: [1_900, 2_300, 2_800], own: [], mean: 2_300 },
      { key: 'not-double', values: [800, 1_000, 1_500], mean: 1_100 },
    ]);
    expect(contrasts).toMatchObject([{ by: 'groups', counts: [3, 3], verdict: 'likely-more' }]);
    expect(apart).toEqual({ values: [], own: [] });
  });

  it('are withheld where three plots are two holders’, and where the third is the reader’s own', () => {
    const others = [not('d', 1_000), not('e', 1_500), not('f', 800)];
    expect(keys(compareBeds([dug('a', 1), dug('a', 2), dug('b', 3), ...others], 'digging', null))).toEqual([]);
    const own = dug('me', 3_000, { isOwn: true });
    expect(keys(compareBeds([dug('a', 1), dug('b', 2), own, ...others], 'digging', null))).toEqual([]);
    const four = compareBeds([dug('a', 1), dug('b', 2), dug('c', 3), own, ...others], 'digging', null);
    expect(four.groups[0]).toMatchObject({ values: [1, 2, 3, 3_000], own: [3_000] });
  });

  it('what is apart is never of one or two: a group beside it is held back with it', () => {
    const five = ['a', 'b', 'c', 'd', 'e'].map((holder, at) => dug(holder, 2_000 + at * 100));
    const three = ['f', 'g', 'h'].map((holder, at) => not(holder, 1_000 + at * 100));
    const found = compareBeds([...five, ...three, bed('i', 900, {})], 'digging', null);
    expect(keys(found)).toEqual(['double']);
    expect(found.apart.values).toEqual([900, 1_000, 1_100, 1_200]);
    const more = compareBeds([...five, ...three, ...['i', 'j', 'k'].map((one) => bed(one, 900, {}))], 'digging', null);
    expect(keys(more)).toEqual(['double', 'not-double']);
  });

  it('what is not shared is told to its own holder beside the others, and counts for nothing', () => {
    const others = ['a', 'b', 'c'].map((holder) => dug(holder, 2_000));
    const own = dug('me', 9_000, { isOwn: true, isShared: false });
    expect(compareBeds([...others, own], 'digging', null).groups).toMatchObject([
      { values: [2_000, 2_000, 2_000], own: [9_000], mean: 2_000 },
    ]);
  });

  it('beds of one plot that were treated alike are one; a plot that changed hands is two', () => {
    const same = { plotId: 'p' };
    const beds = [dug('a', 1_000, same), dug('a', 2_000, same), dug('b', 3_000, same), dug('c', 4_000)];
    expect(compareBeds(beds, 'digging', null).groups[0]?.values).toEqual([1_500, 3_000, 4_000]);
  });

  it('plots that had both are compared as pairs where three holders had them', () => {
    const both = (holder: string, at: number) => {
      const there = { plotId: `p${at}`, isOwn: holder === 'me' };
      return [dug(holder, 2_000 + at * 500, there), not(holder, 1_400 + at * 400, there)];
    };
    const pairsOf = (...holders: string[]) =>
      compareBeds(
        [...holders.flatMap(both), dug('x', 1_000), not('y', 3_000), dug('z', 900), not('w', 800)],
        'digging',
        null,
      ).contrasts[0];
    expect(pairsOf('a', 'b', 'c')).toMatchObject({ by: 'pairs', counts: [3, 3], verdict: 'likely-more' });
    expect(pairsOf('a', 'a', 'b')).toMatchObject({ by: 'groups' });
    // Whoever is one of three, and knows their own, would know what two others come to.
    expect(pairsOf('a', 'b', 'me')).toMatchObject({ by: 'groups' });
  });

  it('one variety alone is refused where it could be told from the rest', () => {
    const of = (variety: string, ...holders: string[]) =>
      holders.map((holder) => bed(holder, 2_000, { digging: 'double', variety }));
    const lone = [...of('sturon', 'a', 'b', 'c', 'd'), ...of('stuttgarter', 'e')];
    expect(varietiesAlone(lone, 'digging')).toEqual([]);
    expect(() => compareBeds(lone, 'digging', 'sturon')).toThrow(RangeError);
    const both = [...of('sturon', 'a', 'b', 'c', 'd'), ...of('stuttgarter', 'e', 'f', 'g')];
    expect(varietiesAlone(both, 'digging')).toEqual(['sturon', 'stuttgarter']);
    expect(compareBeds(both, 'digging', 'sturon').groups[0]?.values).toHaveLength(4);
  });
});

// Every bed a plot and a value of its own, so that whoever reads a value knows the bed.
const holders = ['me', 'a', 'b', 'c', 'd', 'e', 'f', 'g'];
const someBeds = fc
  .array(
    fc.record({
      holdingId: fc.constantFrom(...holders),
      digging: fc.constantFrom('double', 'not-double', null),
      sowing: fc.constantFrom('sown 1', 'sown 9', 'sown 13', 'planted 13', null),
      variety: fc.constantFrom('x', 'y', 'z', null),
    }),
    { maxLength: 40 },
  )
  .chain((rows) =>
    fc.record({
      rows: fc.constant(rows),
      sharing: fc.subarray(holders, { minLength: 3 }),
      reads: fc.boolean(),
    }),
  )
  .map(({ rows, sharing, reads }) =>
    rows.map(
      ({ holdingId, ...groupOf }, at): BedResult => ({
        holdingId,
        plotId: String(at),
        season: 2026,
        gPerM2: 10 + at,
        isShared: sharing.includes(holdingId),
        isOwn: reads && holdingId === 'me',
        groupOf: { ...unknown, ...groupOf },
      }),
    ),
  );

const valuesIn = ({ groups, apart }: Compared) => [...groups, apart].map(({ values }) => values);
const ownIn = ({ groups, apart }: Compared) => [...groups, apart].flatMap(({ own }) => own);

/** All that one question ever tells a reader: the beds of the season, its groups, and its groups of each variety. */
function toldUnder(beds: readonly BedResult[], question: Question): (readonly number[])[] {
  const shared = beds.filter(({ isShared }) => isShared);
  const varieties = [null, ...varietiesAlone(shared, question)];
  const season = seasonsTold(shared).length ? valuesIn(compareBeds(beds, 'season', null)) : [];
  return [...season, ...varieties.flatMap((variety) => valuesIn(compareBeds(beds, question, variety)))].filter(
    (values) => values.length > 0,
  );
}

describe('whatever beds there are, and whoever agreed', () => {
  it('no group, and nothing that is left of groups by taking others away, is of one neighbour or two', () => {
    fc.assert(
      fc.property(someBeds, fc.constantFrom(...questions), (beds, question) => {
        const told = toldUnder(beds, question);
        // Beds that are in and out of the same lists can't be told apart; all that can be reckoned is made up of such parts.
        const parts = new Map<string, Set<string>>();
        for (const { gPerM2, holdingId, isOwn } of beds) {
          const where = told.flatMap((values, at) => (values.includes(gPerM2) ? [at] : [])).join();
          if (where === '') continue;
          const part = parts.get(where) ?? new Set<string>();
          if (!isOwn) part.add(holdingId);
          parts.set(where, part);
        }
        for (const { size } of parts.values()) expect(size === 0 || size >= 3).toBe(true);
      }),
      { numRuns: 2_000 },
    );
  });

  it('those who have not agreed change nothing that others are told', () => {
    fc.assert(
      fc.property(someBeds, fc.constantFrom(...questions), (beds, question) => {
        const without = beds.filter(({ isShared, isOwn }) => isShared || isOwn);
        expect(compareBeds(beds, question, null)).toEqual(compareBeds(without, question, null));
        const of = (value: number) => beds.find(({ gPerM2 }) => gPerM2 === value);
        for (const value of valuesIn(compareBeds(beds, question, null)).flat()) expect(of(value)?.isShared).toBe(true);
      }),
    );
  });

  it('one’s own are always told to oneself, and a list of own to nobody else', () => {
    fc.assert(
      fc.property(someBeds, fc.constantFrom(...questions), (beds, question) => {
        const own = beds.flatMap(({ isOwn, gPerM2 }) => (isOwn ? [gPerM2] : [])).sort((a, b) => a - b);
        expect(ownIn(compareBeds(beds, question, null)).sort((a, b) => a - b)).toEqual(own);
      }),
    );
  });

  it('what is told is the same in whatever order it was written down', () => {
    fc.assert(
      fc.property(someBeds, fc.constantFrom(...questions), (beds, question) => {
        expect(compareBeds([...beds].reverse(), question, null)).toEqual(compareBeds(beds, question, null));
      }),
    );
  });
});
