import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { db, type Tx } from '@/lib/data/db';
import { makeMember, makePlot, makeSociety, type TestSociety } from '../fixtures/society';

// What the database itself refuses, whoever writes: the use-cases are not asked here.
let society: TestSociety;
let holdingId: string;
let elsewhere: { society: TestSociety; holdingId: string };

const holder = async (place: TestSociety) => {
  const member = await makeMember(place);
  return (await makePlot(place, 'P1', [member.id])).holdingId;
};

beforeAll(async () => {
  society = await makeSociety();
  holdingId = await holder(society);
  const other = await makeSociety();
  elsewhere = { society: other, holdingId: await holder(other) };
});

type Line = { account: string; minor: number; holdingId?: string | null };
type Given = { on?: string; kind?: string; words?: string; reversesId?: string; societyId?: string };

async function write(tx: Tx, lines: readonly Line[], given: Given = {}): Promise<string> {
  const { on = '2026-05-04', kind = 'charge', words = 'w', reversesId, societyId = society.id } = given;
  const id = randomUUID();
  await tx.ledgerEntry.create({
    data: {
      ...{ id, societyId, kind, words, on: new Date(on), madeByMemberId: society.secretary.id },
      ...(reversesId ? { reversesId } : {}),
    },
  });
  await tx.ledgerLine.createMany({ data: lines.map((line) => ({ ...line, societyId, entryId: id })) });
  return id;
}

const charge = (minor = 300): Line[] => [
  { account: `holding:${holdingId}`, holdingId, minor },
  { account: 'other:seed', minor: -minor },
];
const turned = (lines: readonly Line[]) => lines.map((line) => ({ ...line, minor: -line.minor }));
const post = (lines: readonly Line[], given: Given = {}) => db().$transaction((tx) => write(tx, lines, given));
const countAll = () => Promise.all([db().ledgerEntry.count(), db().ledgerLine.count()]);

async function refused(work: () => Promise<unknown>, guard: string | RegExp): Promise<void> {
  const before = await countAll();
  await expect(work()).rejects.toThrow(guard);
  expect(await countAll()).toEqual(before);
}

describe('an entry', () => {
  it('that sums to nothing is taken', async () => {
    const id = await post(charge());
    expect(await db().ledgerLine.count({ where: { entryId: id } })).toBe(2);
  });

  it.each([
    ['a penny too much', () => [...charge().slice(0, 1), { account: 'other:seed', minor: -299 }]],
    ['no lines', () => []],
    ['one line', () => [{ account: 'bank', minor: 1 }]],
  ])('with %s is refused when the transaction ends', (_, lines) => refused(() => post(lines()), /sum to/));

  it.each([
    ['a line of nothing', [{ account: 'bank', minor: 0 }]],
    ['more than a million million', [{ account: 'bank', minor: 1_000_000_000_001 }]],
    ['an account that is none', [{ account: 'till', minor: 1 }]],
    ['a holding’s account that says not whose', [{ account: `holding:${randomUUID()}`, minor: 1 }]],
  ])('with %s is refused', (_, lines) => refused(() => post(lines), /ledger_line/));

  it('on a holding’s account under another holding is refused', () =>
    refused(() => post([{ account: `holding:${randomUUID()}`, holdingId, minor: 1 }]), /ledger_line/));

  it('on a holding of another society is refused', () =>
    refused(
      () =>
        post([
          { account: `holding:${elsewhere.holdingId}`, holdingId: elsewhere.holdingId, minor: 1 },
          { account: 'bank', minor: -1 },
        ]),
      /Foreign key/,
    ));

  it('twice on one account is refused', () =>
    refused(
      () =>
        post([
          { account: 'bank', minor: 1 },
          { account: 'bank', minor: -1 },
        ]),
      /Unique constraint/,
    ));

  it.each([
    ['of a kind that is none', { kind: 'gift' }],
    ['without words', { words: '  ' }],
  ])('%s is refused', (_, given) => refused(() => post(charge(), given), /ledger_kinds/));
});

describe('an entry that stands', () => {
  it('is never changed or removed, nor are its lines', async () => {
    const id = await post(charge());
    const never = /never changed or removed/;
    await refused(() => db().ledgerEntry.update({ where: { id }, data: { words: 'other' } }), never);
    await refused(() => db().ledgerEntry.delete({ where: { id } }), never);
    await refused(() => db().ledgerLine.updateMany({ where: { entryId: id }, data: { minor: 1 } }), never);
    await refused(() => db().ledgerLine.deleteMany({ where: { entryId: id } }), never);
  });

  it('takes no further lines, though they sum to nothing', async () => {
    const entryId = await post(charge());
    const lines = [
      { account: 'bank', minor: 5 },
      { account: 'cash', minor: -5 },
    ].map((line) => ({ ...line, entryId, societyId: society.id }));
    await refused(() => db().ledgerLine.createMany({ data: lines }), /was written before/);
  });
});

describe('a correction', () => {
  const correction = { kind: 'correction', on: '2026-05-09' };

  it('takes back the same lines with their signs turned, once', async () => {
    const reversesId = await post(charge());
    await post(turned(charge()), { ...correction, reversesId });
    await refused(() => post(turned(charge()), { ...correction, reversesId }), /Unique constraint/);
  });

  it.each([
    ['by other amounts', () => turned(charge(299))],
    ['in part', () => [...turned(charge()).slice(0, 1), { account: 'bank', minor: 300 }]],
    [
      'with something besides',
      () => [...turned(charge()), { account: 'bank', minor: 1 }, { account: 'cash', minor: -1 }],
    ],
    ['unturned', () => charge()],
  ])('%s is refused', async (_, lines) => {
    const reversesId = await post(charge());
    await refused(() => post(lines(), { ...correction, reversesId }), /does not take back|as it stands/);
  });

  it('of a correction is refused', async () => {
    const first = await post(charge());
    const reversesId = await post(turned(charge()), { ...correction, reversesId: first });
    await refused(() => post(charge(), { ...correction, reversesId }), /cannot take back/);
  });

  it('before the day of what it takes back is refused', async () => {
    const reversesId = await post(charge());
    await refused(() => post(turned(charge()), { ...correction, on: '2026-05-03', reversesId }), /cannot take back/);
  });

  it('of nothing, or another kind of something, is refused', async () => {
    await refused(() => post(charge(), { kind: 'correction' }), /ledger_kind/);
    const reversesId = await post(charge());
    await refused(() => post(turned(charge()), { kind: 'charge', reversesId }), /ledger_kind/);
  });

  it('of another society’s entry is refused', async () => {
    const reversesId = await post(charge());
    const societyId = elsewhere.society.id;
    const lines = [
      { account: 'bank', minor: 1 },
      { account: 'cash', minor: -1 },
    ];
    await refused(() => post(lines, { ...correction, reversesId, societyId }), /Foreign key/);
  });
});
