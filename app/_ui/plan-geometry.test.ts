import { describe, expect, test } from 'vitest';
import {
  boundsOf,
  type DrawnPlot,
  drawPlots,
  fits,
  labelOf,
  markFits,
  outlineOf,
  wordOfEmptyPlot,
} from './plan-geometry';

const square = [
  { xCm: 0, yCm: 0 },
  { xCm: 1000, yCm: 0 },
  { xCm: 1000, yCm: 1000 },
  { xCm: 0, yCm: 1000 },
];

function makePlot(overrides: Partial<DrawnPlot> = {}): DrawnPlot {
  return {
    id: 'a1',
    number: 'A1',
    frame: { originXCm: 500, originYCm: 200, bearingCentideg: 0 },
    polygon: square,
    quarterRods: null,
    toLet: false,
    mine: false,
    beds: [],
    ...overrides,
  };
}

function makeBed(cropName: string, sizeCm: { widthCm: number; lengthCm: number }): DrawnPlot['beds'][number] {
  const footprint = { xCm: 50, yCm: 50, ...sizeCm };
  const plantings = cropName ? [{ id: 'p', footprint, cropName, cropGroup: null }] : [];
  return { id: 'b', name: '1', footprint, href: null, mark: 'short', plantings };
}

describe('drawPlots', () => {
  test('a measured plot lies where its frame says', () => {
    const [plot] = drawPlots([makePlot()]);
    expect(plot && outlineOf(plot)[0]).toEqual({ xCm: 500, yCm: 200 });
    expect(plot?.transform).toBe('translate(500 200) rotate(0)');
    expect(plot?.middle).toEqual({ xCm: 1000, yCm: 700 });
  });

  test('a plot turned a quarter clockwise lies to the left of its origin', () => {
    const frame = { originXCm: 1000, originYCm: 0, bearingCentideg: 9000 };
    const box = boundsOf(drawPlots([makePlot({ frame })]), []);
    expect(box.x).toBeCloseTo(0);
    expect(box.y).toBeCloseTo(0);
    expect(box.width).toBeCloseTo(1000);
    expect(box.height).toBeCloseTo(1000);
  });

  test('plots that nobody measured stand in a row beneath, sized by their rods, not touching', () => {
    const unmeasured = { frame: null, polygon: null };
    const placed = drawPlots([
      makePlot(),
      makePlot({ id: 'u1', ...unmeasured, quarterRods: 40 }),
      makePlot({ id: 'u2', ...unmeasured, quarterRods: 20 }),
    ]);
    const [big, small] = placed.slice(1).map((plot) => boundsOf([plot], []));
    if (!big || !small) throw new Error('two plots were to be placed');
    expect(big.y).toBeGreaterThan(1200);
    expect(small.x).toBeGreaterThan(big.x + big.width);
    // 10 rods are 252.93 m² (a rod is 30.25 square yards).
    expect((big.width * big.height) / 1e4).toBeCloseTo(252.9, -1);
    expect((big.width * big.height) / (small.width * small.height)).toBeCloseTo(2, 1);
  });

  test('nothing to draw still has a sheet', () => {
    expect(boundsOf(drawPlots([]), [])).toEqual({ x: 0, y: 0, width: 1000, height: 600 });
  });

  test('a path beyond the plots widens the sheet', () => {
    expect(boundsOf(drawPlots([makePlot()]), [[{ xCm: 0, yCm: 0 }]])).toEqual({
      x: 0,
      y: 0,
      width: 1500,
      height: 1200,
    });
  });
});

describe('words on the plan', () => {
  test('a word fits by its length and its height', () => {
    expect(fits('Kale', 240, 120, 100)).toBe(true);
    expect(fits('Kale', 230, 120, 100)).toBe(false);
    expect(fits('Kale', 240, 110, 100)).toBe(false);
  });

  test('a mark is written only where it does not lie on the crop', () => {
    expect(markFits(makeBed('', { widthCm: 300, lengthCm: 120 }), 'short', 100)).toBe(true);
    expect(markFits(makeBed('Kale', { widthCm: 300, lengthCm: 120 }), 'short', 100)).toBe(false);
    expect(markFits(makeBed('Kale', { widthCm: 1000, lengthCm: 120 }), 'short', 100)).toBe(true);
    expect(markFits(makeBed('Kale', { widthCm: 300, lengthCm: 600 }), 'short', 100)).toBe(true);
    expect(markFits(makeBed('', { widthCm: 100, lengthCm: 120 }), 'short', 100)).toBe(false);
  });

  test('a name is written in full, else up to its comma, else downwards, else smaller, else not at all', () => {
    const label = (name: string, widthCm: number, lengthCm: number) =>
      labelOf(name, { xCm: 0, yCm: 0, widthCm, lengthCm }, 100);
    expect(label('Potato, maincrop', 1000, 120)).toEqual({ word: 'Potato, maincrop', letterCm: 100, down: false });
    expect(label('Potato, maincrop', 400, 120)).toEqual({ word: 'Potato', letterCm: 100, down: false });
    expect(label('Leek', 120, 400)).toEqual({ word: 'Leek', letterCm: 100, down: true });
    expect(label('Leek', 200, 130)).toEqual({ word: 'Leek', letterCm: 80, down: false });
    expect(label('Leek', 200, 120)).toEqual({ word: 'Leek', letterCm: 80, down: false });
    expect(label('Leek', 60, 60)).toBeNull();
  });

  test('an empty plot says why, shorter where it is small, and nothing where nothing fits', () => {
    const word = (plot: Partial<DrawnPlot>, letterCm: number) =>
      drawPlots([makePlot(plot)]).map((placed) => wordOfEmptyPlot(placed, letterCm))[0];
    const unmeasured = { frame: null, polygon: null, quarterRods: 20 };
    expect(word({ toLet: true }, 100)).toBe('to let');
    expect(word({}, 100)).toBe('no beds yet');
    expect(word({}, 200)).toBe('empty');
    expect(word(unmeasured, 100)).toBe('not measured');
    expect(word(unmeasured, 150)).toBe('5 rods');
    expect(word(unmeasured, 900)).toBe('');
  });
});
