import { expect, test } from 'vitest';
import { groundDrawing } from './ground-drawing';

const site = { id: 's', name: 'The site', northCentideg: 0, outline: null };
const frame = { originXCm: 1000, originYCm: 200, bearingCentideg: 9000 };
const plot = (id: string, number: string, at: Partial<typeof frame> | null) => ({
  ...{ id, siteId: 's', number },
  polygon: [
    [0, 0],
    [800, 0],
    [800, 2000],
  ],
  frame: at ? { ...frame, ...at } : { originXCm: null, originYCm: null, bearingCentideg: 0 },
});
const bed = { id: 'b', plotId: 'p', name: 'one', xCm: 100, yCm: 0, widthCm: 600, lengthCm: 200 };

test('shapes stand on the site, turned with their plot; what nobody measured in has none', () => {
  const { sites } = groundDrawing({
    sites: [site],
    plots: [plot('p', '1', {}), plot('q', '2', null)],
    beds: [bed],
    paths: [
      {
        id: 'w',
        siteId: 's',
        name: null,
        points: [
          [0, 0],
          [5, 5],
        ],
        lorry: 'none',
      },
    ],
    dropPoints: [{ id: 'd', siteId: 'other', name: 'elsewhere', xCm: 1, yCm: 2 }],
  });
  // A quarter turn: what went right goes down, what went down goes left.
  expect(sites[0]?.plots[0]?.corners).toEqual([
    [1000, 200],
    [1000, 1000],
    [-1000, 1000],
  ]);
  expect(sites[0]?.plots[0]?.beds[0]?.corners?.[0]).toEqual([1000, 300]);
  expect(sites[0]?.plots[1]).toMatchObject({ corners: null, beds: [] });
  expect(sites[0]?.paths).toHaveLength(1);
  expect(sites[0]?.dropPoints).toEqual([]);
});
