import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handsNeeded } from './quorum';
import { type CarriedBy, type Choice, type RaisedHand, tally } from './tally';

const motion: Choice[] = [
  { id: 'yes', stands: 'for' },
  { id: 'no', stands: 'against' },
  { id: 'neither', stands: 'abstain' },
];
const three: Choice[] = [
  { id: 'a', stands: 'choice' },
  { id: 'b', stands: 'choice' },
  { id: 'c', stands: 'choice' },
  { id: 'none', stands: 'abstain' },
];
const raised = (counts: Record<string, number>): RaisedHand[] =>
  Object.entries(counts).flatMap(([choiceId, hands]) =>
    Array.from({ length: hands }, (_, at) => ({ holder: `${choiceId} ${at}`, choiceId })),
  );
const rule = (change: Partial<Parameters<typeof tally>[2]> = {}) => ({
  entitled: 20,
  quorum: { kind: 'number' as const, amount: 0 },
  carriedBy: 'more' as CarriedBy,
  ...change,
});

describe('a motion', () => {
  it.each([
    [{ yes: 7, no: 5, neither: 2 }, 'more', 'carried'],
    [{ yes: 5, no: 5 }, 'more', 'not-carried'],
    [{ yes: 1, neither: 9 }, 'more', 'carried'],
    [{ no: 3 }, 'more', 'not-carried'],
    [{}, 'more', 'not-carried'],
    [{}, 'two-thirds', 'not-carried'],
    [{ yes: 7, no: 5, neither: 2 }, 'two-thirds', 'not-carried'],
    [{ yes: 4, no: 2 }, 'two-thirds', 'carried'],
    [{ yes: 5, no: 3 }, 'two-thirds', 'not-carried'],
    [{ yes: 2, no: 1, neither: 9 }, 'two-thirds', 'carried'],
  ] as const)('%j by %s: %s', (counts, carriedBy, outcome) => {
    const found = tally(motion, raised(counts as Record<string, number>), rule({ carriedBy }));
    expect([found.outcome, found.carriedId]).toEqual([outcome, outcome === 'carried' ? 'yes' : null]);
  });

  it('carries with the quorum, abstentions counted, and not with a hand fewer', () => {
    const hands = raised({ yes: 3, neither: 2 });
    expect(tally(motion, hands, rule({ quorum: { kind: 'number', amount: 5 } })).outcome).toBe('carried');
    expect(tally(motion, hands, rule({ quorum: { kind: 'number', amount: 6 } })).outcome).toBe('no-quorum');
    expect(tally(motion, hands, rule({ quorum: { kind: 'percent', amount: 25 } }))).toMatchObject({
      needed: 5,
      hands: 5,
    });
    expect(tally(motion, hands, rule({ quorum: { kind: 'percent', amount: 26 } })).outcome).toBe('no-quorum');
  });

  it('of each holder the last hand counts', () => {
    const hands = ['yes', 'no', 'yes', 'no'].map((choiceId) => ({ holder: 'one', choiceId }));
    expect(tally(motion, hands, rule()).counts.map(({ hands: count }) => count)).toEqual([0, 1, 0]);
  });
});

describe('a choice', () => {
  it.each([
    [{ a: 4, b: 3, c: 3 }, 'more', 'a'],
    [{ a: 4, b: 4, c: 1 }, 'more', null],
    [{ a: 6, b: 2, c: 1 }, 'two-thirds', 'a'],
    [{ a: 5, b: 3 }, 'two-thirds', null],
  ] as const)('%j by %s: %s', (counts, carriedBy, carriedId) => {
    expect(tally(three, raised(counts), rule({ carriedBy })).carriedId).toBe(carriedId);
  });
});

describe('what is no count', () => {
  it.each([
    ['one choice', () => tally(motion.slice(0, 1), [], rule())],
    ['a choice twice', () => tally([...motion, ...motion], [], rule())],
    ['a hand for nothing', () => tally(motion, [{ holder: 'x', choiceId: 'maybe' }], rule())],
    ['more hands than are entitled', () => tally(motion, raised({ yes: 2 }), rule({ entitled: 1 }))],
    ['half a hand', () => handsNeeded({ kind: 'number', amount: 0.5 }, 3)],
    ['more than all', () => handsNeeded({ kind: 'percent', amount: 101 }, 3)],
  ])('%s', (_, count) => expect(count).toThrow(RangeError));
});

// The slow way: go from hand to hand with a pencil, and rub out a holder's earlier one.
function byPencil(choices: readonly Choice[], hands: readonly RaisedHand[], by: CarriedBy, needed: number) {
  const slate: RaisedHand[] = [];
  for (const hand of hands) {
    const before = slate.findIndex(({ holder }) => holder === hand.holder);
    if (before >= 0) slate.splice(before, 1);
    slate.push(hand);
  }
  const strokes: Record<string, number> = {};
  for (const { id } of choices) strokes[id] = 0;
  for (const { choiceId } of slate) strokes[choiceId] = (strokes[choiceId] ?? 0) + 1;
  const spoken = slate.filter(({ choiceId }) => choices.find(({ id }) => id === choiceId)?.stands !== 'abstain').length;
  const winners: string[] = [];
  for (const choice of choices) {
    if (choice.stands === 'abstain' || choice.stands === 'against') continue;
    const mine = strokes[choice.id] ?? 0;
    let beaten = mine === 0;
    for (const other of choices)
      if (other !== choice && other.stands !== 'abstain' && (strokes[other.id] ?? 0) >= mine) beaten = true;
    if (by === 'two-thirds') beaten = mine === 0 || mine / spoken < 2 / 3 - 1e-12;
    if (!beaten) winners.push(choice.id);
  }
  return { strokes, hands: slate.length, carried: slate.length < needed ? [] : winners };
}

const counted = fc.record({
  choices: fc.constantFrom(motion, three),
  picks: fc.array(fc.tuple(fc.nat(11), fc.nat(3)), { maxLength: 60 }),
  by: fc.constantFrom<CarriedBy>('more', 'two-thirds'),
  quorum: fc.record({ kind: fc.constantFrom<'number' | 'percent'>('number', 'percent'), amount: fc.nat(30) }),
});

describe('any count', () => {
  it('agrees with a pencil and a slate', () => {
    fc.assert(
      fc.property(counted, ({ choices, picks, by, quorum }) => {
        const hands = picks.map(([holder, at]) => ({
          holder: String(holder),
          choiceId: choices[at % choices.length]?.id ?? '',
        }));
        const found = tally(choices, hands, { entitled: 12, quorum, carriedBy: by });
        const slow = byPencil(choices, hands, by, found.needed);
        expect(Object.fromEntries(found.counts.map(({ choiceId, hands: count }) => [choiceId, count]))).toEqual(
          slow.strokes,
        );
        expect(found.hands).toBe(slow.hands);
        // Never two that carry.
        expect(found.carriedId === null ? [] : [found.carriedId]).toEqual(slow.carried);
        expect(found.outcome === 'no-quorum').toBe(found.hands < found.needed);
      }),
    );
  });

  it('one hand more for what carried never takes it away', () => {
    fc.assert(
      fc.property(counted, ({ choices, picks, by, quorum }) => {
        const hands = picks.map(([holder, at]) => ({
          holder: String(holder),
          choiceId: choices[at % choices.length]?.id ?? '',
        }));
        const rules = { entitled: 13, quorum, carriedBy: by };
        const { carriedId, needed } = tally(choices, hands, rules);
        if (carriedId === null) return;
        const more = tally(choices, [...hands, { holder: 'a new one', choiceId: carriedId }], rules);
        expect([more.carriedId, more.needed]).toEqual([carriedId, needed]);
      }),
    );
  });

  it('changes no hand that it is given', () => {
    const hands = Object.freeze(raised({ yes: 2, no: 1 }).map((hand) => Object.freeze(hand)));
    expect(tally(Object.freeze(motion), hands, rule()).hands).toBe(3);
  });
});
