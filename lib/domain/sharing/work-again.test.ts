import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Claim } from './claim';
import { canonicalBookings, commitmentOf, lotSeed } from './lot';
import { orderOf } from './order';
import { queueOf } from './queue';
import { roundsOf } from './rounds';
import { shareOut } from './share-out';
import { type ShareOutInputs, workAgain } from './work-again';

const bytesHex = '5e'.repeat(32);
const claims: readonly Claim[] = [
  { id: 'a', asked: 5, need: 2, creditMillionths: 0 },
  { id: 'b', asked: 3, need: 3, creditMillionths: 333_333 },
  { id: 'c', asked: 4, need: 0, creditMillionths: -333_333 },
  { id: 'l', asked: 2, need: 2, creditMillionths: 0, late: 0 },
];
const frozenOf = (all: readonly Claim[]) =>
  all
    .filter(({ late }) => late === undefined)
    .map(({ id, asked, need, creditMillionths }) => ({ id, asked, need, creditMillionths }));
const inputsOf = (loads: number, all: readonly Claim[] = claims): ShareOutInputs => ({
  ...{ deliveryId: 'd1', bytesHex, loads, claims: all },
  commitment: commitmentOf(bytesHex),
  frozen: frozenOf(all),
});
const seedOf = ({ deliveryId, frozen }: ShareOutInputs) => lotSeed({ bytesHex, deliveryId, bookings: frozen });
const shownOf = (inputs: ShareOutInputs) =>
  shareOut({ loads: inputs.loads, claims: inputs.claims, lotSeed: seedOf(inputs) }).shares;
const codes = (...given: Parameters<typeof workAgain>) => workAgain(...given).differences.map(({ code }) => code);

describe('worked out again', () => {
  it.each([0, 4, 7, 9, 13, 20])('a heap of %i agrees with itself', (loads) => {
    expect(workAgain(inputsOf(loads), shownOf(inputsOf(loads)))).toMatchObject({ differences: [] });
  });

  it('finds every figure that was changed', () => {
    const inputs = inputsOf(7);
    const shown = shownOf(inputs);
    fc.assert(
      fc.property(
        fc.nat(claims.length - 1),
        fc.constantFrom('share', 'dueMillionths', 'creditAfterMillionths'),
        fc.integer({ min: -3, max: 3 }).filter((by) => by !== 0),
        (at, key, by) => {
          const bent = shown.map((line, nth) => (nth === at ? { ...line, [key]: line[key as 'share'] + by } : line));
          expect(workAgain(inputs, bent).differences).toHaveLength(1);
        },
      ),
    );
    expect(codes(inputs, shown.slice(1))).toEqual(['not-shown']);
    expect(codes(inputs, [...shown, { ...shown[0], id: 'z' } as (typeof shown)[number]])).toEqual(['not-claimed']);
  });

  it('finds bytes that are not those whose hash was published', () => {
    const inputs = inputsOf(7);
    expect(codes({ ...inputs, commitment: commitmentOf('00'.repeat(32)) }, shownOf(inputs))).toEqual(['hash']);
    // Other bytes draw another lot too, so they are found out twice or more where the lot decides.
    expect(codes({ ...inputs, bytesHex: '00'.repeat(32) }, shownOf(inputs))[0]).toBe('hash');
  });

  it('finds a claim that is not as it was frozen, but lets a share be given up and somebody come late', () => {
    const inputs = inputsOf(20);
    const withClaims = (changed: readonly Claim[]) => ({ ...inputs, claims: changed });
    const change = (id: string, by: Partial<Claim>) =>
      withClaims(claims.map((claim) => (claim.id === id ? { ...claim, ...by } : claim)));
    const against = (bent: ShareOutInputs) => codes(bent, shownOf(bent));
    expect(against(change('a', { asked: 6 }))).toEqual(['claim-changed']);
    expect(against(change('a', { need: 5 }))).toEqual(['claim-changed']);
    expect(against(change('b', { creditMillionths: 0 }))).toEqual(['claim-changed']);
    expect(against(withClaims(claims.slice(1)))).toEqual(['claim-missing']);
    expect(against(withClaims([...claims, { id: 'x', asked: 1, need: 0, creditMillionths: 0 }]))).toEqual([
      'claim-changed',
    ]);
    expect(against(change('a', { asked: 2, collected: 2 }))).toEqual([]);
    expect(against(withClaims([...claims, { id: 'm', asked: 1, need: 0, creditMillionths: 0, late: 1 }]))).toEqual([]);
  });

  it('rests on the canonical text that anybody can hash', () => {
    const { seed } = workAgain(inputsOf(7), shownOf(inputsOf(7)));
    expect(seed).toBe(seedOf(inputsOf(7)));
    expect(canonicalBookings('d1', inputsOf(7).frozen)).not.toContain('l:');
  });
});

const row = fc.record({ asked: fc.nat(6), need: fc.nat(6), creditMillionths: fc.constantFrom(0, 500_000, -500_000) });
const some = fc
  .tuple(fc.array(row, { maxLength: 7 }), fc.nat(3))
  .map(([rows, lateFrom]) =>
    rows.map((one, at): Claim => ({ ...one, id: `c${at}`, ...(at > 6 - lateFrom ? { late: 9 - at } : {}) })),
  );

describe('rounds and order', () => {
  it('rounds hold the places of the queue, in its order', () => {
    fc.assert(
      fc.property(some, fc.nat(40), (all, places) => {
        const queue = queueOf(all, 'ab', places);
        const rounds = roundsOf(all, places, 'ab');
        expect(rounds.flatMap(({ served }) => served)).toEqual(queue.map(({ id }) => id));
        for (const { from, stage, round } of rounds) expect(queue[from - 1]).toMatchObject({ stage, round });
        expect(rounds.slice(0, -1).every(({ missed }) => missed.length === 0)).toBe(true);
      }),
    );
  });

  it('who was met has as many places as were asked', () => {
    fc.assert(
      fc.property(some, fc.nat(40), (all, places) => {
        const rounds = roundsOf(all, places, 'ab');
        const met = rounds.flatMap((one) => one.met);
        const count = (id: string) => rounds.flatMap(({ served }) => served).filter((one) => one === id).length;
        for (const { id, asked } of all) expect(met.includes(id)).toBe(asked > 0 && count(id) === asked);
      }),
    );
  });

  it('the order is that of every round', () => {
    fc.assert(
      fc.property(some, (all) => {
        const order = orderOf(all, 'ab');
        expect([...order].sort()).toEqual(all.map(({ id }) => id).sort());
        for (const { served } of roundsOf(all, 99, 'ab'))
          expect(served).toEqual(order.filter((id) => served.includes(id)));
      }),
    );
  });
});
