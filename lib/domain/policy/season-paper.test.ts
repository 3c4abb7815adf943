import { expect, test } from 'vitest';
import { canReadSeasonPaper } from './season-paper';
import type { Role } from './standing';

test.each<[readonly Role[], string, boolean]>([
  [['secretary'], 'committee', true],
  [['treasurer'], 'committee', true],
  [['chair'], 'committee', true],
  [['gate_helper'], 'committee', false],
  [[], 'committee', false],
  [[], 'members', true],
  [['gate_helper'], 'members', true],
  [[], 'everybody', false],
])('%j, read by %s: %s', (roles, readBy, may) =>
  expect(canReadSeasonPaper({ memberId: 'm', roles }, readBy)).toBe(may),
);
