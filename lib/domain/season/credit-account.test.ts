import { expect, test } from 'vitest';
import { creditAccount, type CreditLine } from './credit-account';

const line = (materialKey: string, holdingId: string | null, startMillionths: number, endMillionths: number) => ({
  ...{ materialKey, holdingId, startMillionths, endMillionths },
});

test('credits by material, the lapsed line among them', () => {
  const lines = [line('straw', 'h1', 5, -2), line('horse', 'h1', 0, 0), line('straw', null, -5, 2)];
  const account = creditAccount(lines);
  expect([...account.keys()]).toEqual(['straw', 'horse']);
  expect(account.get('straw')).toEqual([lines[0], lines[2]]);
});

test.each<[string, CreditLine[]]>([
  ['not nothing at the start', [line('straw', 'h1', 1, 0)]],
  ['not nothing at the end', [line('straw', 'h1', 0, 2), line('straw', 'h2', 0, -1)]],
  ['nothing only over two materials', [line('straw', 'h1', 1, 0), line('horse', 'h1', -1, 0)]],
  ['a holding twice', [line('straw', 'h1', 1, 0), line('straw', 'h1', -1, 0)]],
  ['a fraction', [line('straw', 'h1', 0.5, 0), line('straw', 'h2', -0.5, 0)]],
])('refused: %s', (_, lines) => expect(() => creditAccount(lines)).toThrow(RangeError));
