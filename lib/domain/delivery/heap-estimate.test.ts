import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heapEstimate } from './heap-estimate';

const heap = { heapLoads: 40, sharedLoads: 38, collectedLoads: 20, look: null };

describe('what is left on a heap that is being collected', () => {
  it('is told by the count alone where nobody has looked, and warns of nothing', () => {
    expect(heapEstimate(heap)).toEqual({ byCount: 20, byEye: null, toCome: 18, mayRunShort: false });
  });

  it.each([
    ['as many as are to come', { loads: 18, collectedLoads: 20 }, 18, false],
    ['one fewer', { loads: 17, collectedLoads: 20 }, 17, true],
    ['less what was ticked off since', { loads: 12, collectedLoads: 17 }, 9, true],
    ['and never below nothing', { loads: 2, collectedLoads: 10 }, 0, true],
    ['more again, where ticks were undone since', { loads: 12, collectedLoads: 22 }, 14, true],
    ['more than was ever measured', { loads: 60, collectedLoads: 20 }, 60, false],
  ])('is told by the newest look: %s', (_, look, byEye, mayRunShort) => {
    expect(heapEstimate({ ...heap, look })).toMatchObject({ byEye, mayRunShort, byCount: 20, toCome: 18 });
  });

  it('warns of nothing once everybody has theirs', () => {
    const done = { ...heap, collectedLoads: 38, look: { loads: 0, collectedLoads: 38 } };
    expect(heapEstimate(done)).toEqual({ byCount: 2, byEye: 0, toCome: 0, mayRunShort: false });
  });

  it('answers alike before and after a share is fetched', () => {
    fc.assert(
      fc.property(fc.nat(90), fc.nat(90), fc.nat(90), fc.nat(90), fc.nat(200), (a, b, c, d, loads) => {
        const collectedLoads = a;
        const sharedLoads = a + b + 1;
        const look = { loads, collectedLoads: Math.max(0, a - d) };
        const before = { heapLoads: sharedLoads + c, sharedLoads, collectedLoads, look };
        const after = { ...before, collectedLoads: collectedLoads + 1 };
        const [first, then] = [heapEstimate(before), heapEstimate(after)];
        // A heap that looked empty stays so, however much is still ticked off it.
        if ((first.byEye ?? 0) > 0) expect(then.mayRunShort).toBe(first.mayRunShort);
        expect(then.byCount).toBe(first.byCount - 1);
        expect(then.toCome).toBe(first.toCome - 1);
      }),
    );
  });

  it('refuses counts that cannot be', () => {
    for (const bad of [{ collectedLoads: 39 }, { sharedLoads: 41 }, { heapLoads: -1 }, { collectedLoads: 0.5 }])
      expect(() => heapEstimate({ ...heap, ...bad })).toThrow(RangeError);
    expect(() => heapEstimate({ ...heap, look: { loads: -1, collectedLoads: 0 } })).toThrow(RangeError);
  });
});
