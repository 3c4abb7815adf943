import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import type { Caller } from '@/lib/usecases/operation';
import { answerTo, fingerprint, fingerprintOf, idsIn, writtenIn } from './answers';
import { rows } from './matrix/rows';
import { idsNamed, type Row } from './row';
import { figureOf, fillSociety, type FilledSociety } from './society';

// The secretary of another society, at home there: nothing of ours is found, shown or changed from theirs.
let ours: FilledSociety;
let theirs: FilledSociety;
let stranger: Caller;
// A value that only our rules have.
const ourRule = '04-17';
let ourIds: ReadonlyMap<string, string>;

beforeAll(async () => {
  ours = await fillSociety();
  theirs = await fillSociety();
  stranger = theirs.callers.secretary;
  const rule = { key: 'seasonFrom', value: ourRule, effectiveFrom: new Date('2020-01-01') };
  await db().societySetting.create({ data: { ...rule, societyId: ours.id } });
  ourIds = await idsIn(ours.id);
  expect(ourIds.size).toBeGreaterThan(100);
});

const named = (kind: string, withIds: boolean) =>
  rows
    .filter((row) => row.operation.kind === kind && idsNamed(row.input).length > 0 === withIds)
    .map((row) => [row.operation.name, row] as const);

describe('a question with our ids', () => {
  it.each(named('query', true))('%s', async (_, row) => {
    const answers = await Promise.all(
      everyInput(row).map((input) => answerTo(row.operation, stranger, input).then((answer) => ({ input, ...answer }))),
    );
    for (const { text, ...answer } of answers) {
      expect(answer).toMatchObject({ is: row.idIsFilter ? 'done' : 'not found' });
      expectNothingOfOurs(text);
    }
  });
});

describe('a question with no ids', () => {
  it.each(named('query', false))('%s', async (_, row) => {
    const { is, text } = await answerTo(row.operation, stranger, row.input(ours.ids));
    expect(is).toBe('done');
    expectNothingOfOurs(text);
  });
});

describe('a change with our ids', () => {
  it.each(named('mutation', true))('%s', async (_, row) => {
    const before = await fingerprint();
    const whole = await answerTo(row.operation, stranger, row.input(ours.ids));
    expect(whole).toEqual({ is: 'not found', text: '' });
    // One of ours among their own must not slip in either.
    for (const key of idsNamed(row.input)) {
      const { is, text } = await answerTo(row.operation, stranger, row.input({ ...theirs.ids, [key]: ours.ids[key] }));
      expect({ key, is }).not.toEqual({ key, is: 'done' });
      expectNothingOfOurs(text);
    }
    expect(await fingerprint()).toBe(before);
  });
});

describe('a change with no ids', () => {
  it.each(named('mutation', false))('%s', async (_, row) => {
    const before = await fingerprintOf(ours.id);
    const { is, text } = await answerTo(row.operation, stranger, row.input(ours.ids));
    expect(is).toBe('done');
    expectNothingOfOurs(text);
    expect(await fingerprintOf(ours.id)).toBe(before);
  });

  it('has written nothing of ours into their rows', async () => {
    expectNothingOfOurs(await writtenIn(theirs.id));
  });
});

/** The input with each of our ids of the kind that it names: every delivery, every bed. */
function everyInput(row: Row): object[] {
  return idsNamed(row.input).flatMap((key) => {
    const kind = ourIds.get(ours.ids[key]);
    const alike = [...ourIds].filter(([, table]) => table === kind).map(([id]) => id);
    return alike.map((id) => row.input({ ...ours.ids, [key]: id }));
  });
}

function expectNothingOfOurs(text: string): void {
  expect(text).not.toContain(ours.tag);
  expect(text).not.toContain(String(figureOf(ours.tag)));
  expect(text).not.toContain(`"${ourRule}"`);
  expect([...ourIds].filter(([id]) => text.includes(id))).toEqual([]);
}
