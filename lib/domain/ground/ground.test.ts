import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bedsClash, joinFootprints, nextBedAt, splitFootprint } from './beds';
import { areaCm2, footprint, overlap, subtract } from './footprint';
import { toSite } from './frame';
import {
  cornersOf,
  cutPolygon,
  footprintOutside,
  isSimple,
  joinPolygons,
  polygonAreaCm2,
  polygonsOverlap,
} from './polygon';

const square = cornersOf(footprint(0, 0, 1000, 1000));
const rect = fc
  .record({ x: fc.nat(9), y: fc.nat(9), w: fc.integer({ min: 1, max: 6 }), l: fc.integer({ min: 1, max: 6 }) })
  .map(({ x, y, w, l }) => footprint(x, y, w, l));

describe('footprints', () => {
  it('subtract to what lies under none of the others, counted square by square', () => {
    fc.assert(
      fc.property(rect, fc.array(rect, { maxLength: 6 }), (ground, others) => {
        let left = 0;
        for (let x = ground.xCm; x < ground.xCm + ground.widthCm; x++)
          for (let y = ground.yCm; y < ground.yCm + ground.lengthCm; y++)
            if (!others.some((other) => overlap(other, footprint(x, y, 1, 1)))) left++;
        expect(subtract(ground, others).reduce((sum, piece) => sum + areaCm2(piece), 0)).toBe(left);
      }),
    );
  });

  it('only touch where they only touch', () => {
    expect(overlap(footprint(0, 0, 10, 10), footprint(10, 0, 10, 10))).toBeNull();
  });

  it('split and join again', () => {
    const bed = footprint(10, 20, 120, 360);
    const [a, b] = splitFootprint(bed, 'y', 100);
    expect(joinFootprints(a, b)).toEqual(bed);
    expect(joinFootprints(a, footprint(500, 500, 10, 10))).toBeNull();
    expect(() => splitFootprint(bed, 'x', 120)).toThrow(RangeError);
  });

  it('name the edge that lies over another bed', () => {
    expect(bedsClash(footprint(0, 0, 110, 100), [{ name: '3', footprint: footprint(100, 0, 100, 100) }])).toEqual({
      name: '3',
      edge: 'right',
      byCm: 10,
    });
    expect(bedsClash(footprint(0, 0, 100, 100), [{ name: '3', footprint: footprint(100, 0, 100, 100) }])).toBeNull();
  });

  it('go below the others when nobody says where', () => {
    expect(nextBedAt([footprint(0, 0, 120, 360)])).toEqual({ xCm: 0, yCm: 420 });
  });

  it('refuse halves of a centimetre and beds of no size', () => {
    expect(() => footprint(0, 0, 1.5, 1)).toThrow(RangeError);
    expect(() => footprint(0, 0, 0, 1)).toThrow(RangeError);
  });
});

describe('plots', () => {
  it('name the edge of a bed that lies outside, and by how much', () => {
    expect(footprintOutside(footprint(900, 100, 200, 100), square)).toEqual({ edge: 'right', byCm: 100 });
    expect(footprintOutside(footprint(0, 0, 1000, 1000), square)).toBeNull();
  });

  it('mind the inward corner of an L', () => {
    const ell = [
      [0, 0],
      [1000, 0],
      [1000, 400],
      [400, 400],
      [400, 1000],
      [0, 1000],
    ].map(([xCm = 0, yCm = 0]) => ({ xCm, yCm }));
    expect(footprintOutside(footprint(300, 300, 200, 100), ell)).toBeNull();
    expect(footprintOutside(footprint(300, 300, 200, 200), ell)).not.toBeNull();
  });

  it('are cut into parts that keep the area, and join again', () => {
    const [top, bottom] = cutPolygon(square, 'y', 400);
    expect([polygonAreaCm2(top), polygonAreaCm2(bottom)]).toEqual([400_000, 600_000]);
    expect(polygonAreaCm2(joinPolygons(top, bottom, 0) ?? [])).toBe(1_000_000);
    expect(() => cutPolygon(square, 'x', 1200)).toThrow(RangeError);
  });

  it('do not cross themselves', () => {
    expect(isSimple(square)).toBe(true);
    const [a, b, c, d] = square;
    if (!a || !b || !c || !d) throw new Error('a square has four corners');
    expect(isSimple([a, c, b, d])).toBe(false);
  });

  it('may share a boundary, not ground', () => {
    const moved = (xCm: number) => square.map((corner) => ({ ...corner, xCm: corner.xCm + xCm }));
    expect(polygonsOverlap(square, moved(1000), 30)).toBe(false);
    expect(polygonsOverlap(square, moved(500), 30)).toBe(true);
  });

  it('stand on the site turned by their bearing', () => {
    const point = toSite({ originXCm: 1000, originYCm: 0, bearingCentideg: 9000 }, { xCm: 100, yCm: 0 });
    expect([Math.round(point.xCm), Math.round(point.yCm)]).toEqual([1000, 100]);
  });
});
