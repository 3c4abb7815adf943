import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wordsFor } from '@/app/_server/words';
import { NotFound, type Outcome } from '@/lib/usecases/refusal';
import { fingerprint } from '../access/answers';
import { doors } from '../fixtures/bad-input/doors';
import type { Field, Row } from '../fixtures/bad-input/row';
import { rows } from '../fixtures/bad-input/rows';
import { makeWorld, type World } from '../fixtures/bad-input/world';
import { shown } from '../fixtures/bad-values';
import { keepDatabase } from '../fixtures/kept-database';

let world: World;
let kept: Awaited<ReturnType<typeof keepDatabase>>;

beforeAll(async () => {
  world = await makeWorld();
  kept = await keepDatabase();
});

afterAll(() => kept.end());

const forms = [...rows, ...doors];

describe('the table of forms', () => {
  it('has a row for every mutation there is, and in it every field of its form', async () => {
    const files = fs
      .readdirSync('lib/usecases', { recursive: true })
      .map(String)
      .filter((name) => name.endsWith('.ts'));
    const modules = await Promise.all(files.map((name) => import(path.resolve('lib/usecases', name))));
    const mutations = modules
      .flatMap((module) => Object.values(module as object))
      .filter((one): one is Row & { kind: string } => one !== null && typeof one === 'object' && 'run' in one)
      .filter(({ kind }) => kind === 'mutation')
      .map(({ name }) => name);
    expect(mutations.length).toBeGreaterThan(40);
    expect([...new Set(mutations)].toSorted()).toEqual(rows.map(({ name }) => name).toSorted());
    for (const { name, schema, fields } of forms)
      expect([name, Object.keys(schema.shape).toSorted()]).toEqual([name, plain(fields).toSorted()]);
  });
});

const plain = (fields: Row['fields']) => Object.keys(fields).filter((name) => !fields[name]?.put);

const inputOf = (row: Row, change: object = {}) => ({ writeId: randomUUID(), ...row.valid(world), ...change });

type Answer = Outcome<unknown> | 'not found' | { readonly thrown: string };

async function answerOf(row: Row, raw: unknown): Promise<Answer> {
  try {
    return await row.run(row.by?.(world) ?? world.secretary, raw);
  } catch (error) {
    return error instanceof NotFound ? 'not found' : { thrown: String(error).slice(0, 300) };
  }
}

// What a complaint must never show: a schema's own English, a code, a value of the language.
const raw =
  /invalid|expected|received|unrecognized|undefined|\bNaN\b|\[object|\bnull\b|RangeError|regex|[a-z]+_[a-z]+/i;

/** What is wrong with an answer to bad input; null where it is as it should be. */
function faultOf(answer: Answer, names: readonly string[], mayBeNotFound: boolean): string | null {
  if (answer === 'not found') return mayBeNotFound ? null : 'not found';
  if ('thrown' in answer) return `thrown: ${answer.thrown}`;
  if (answer.ok) return 'taken';
  const beside = answer.refusals.filter(
    ({ field }) => field && names.some((name) => field === name || isLineOf(field, name)),
  );
  if (beside.length === 0) return `refused beside ${answer.refusals.map(({ field, code }) => `${field} (${code})`)}`;
  const words = answer.refusals.map(wordsFor);
  const bad = words.find(
    (sentence) => !/^\p{Lu}.*[.!?]$/su.test(sentence) || raw.test(sentence) || sentence.length > 600,
  );
  return bad === undefined ? null : `in the words “${bad.slice(0, 200)}”`;
}

// A table's faults are numbered.
const isLineOf = (field: string, name: string) => name === 'table' && field.startsWith('table.');

const putInto = (row: Row, name: string, field: Field, value: unknown) =>
  inputOf(row, field.put ? field.put(world, value) : { [name]: value });

describe.each(forms.map((row) => [row.name, row] as const))('%s', (_, row) => {
  const fields = Object.entries(row.fields);

  beforeAll(async () => {
    await kept.restore();
    await row.first?.(world);
  });

  it.each(fields)('refuses bad values beside %s, and writes nothing', async (name, field) => {
    const before = await fingerprint();
    const names = field.named?.(world) ?? [name];
    const isId = /ids?$/i.test(name) && name !== 'writeId';
    const faults: string[] = [];
    for (const value of field.bad) {
      const fault = faultOf(
        await answerOf(row, putInto(row, name, field, value)),
        [...names, name],
        isId || name === 'replaces',
      );
      if (fault) faults.push(`${shown(value)} ${fault}`);
    }
    if (!field.optional && !field.put) {
      const { [name as 'writeId']: _, ...without } = inputOf(row);
      const fault = faultOf(await answerOf(row, without), names, false);
      if (fault) faults.push(`left out: ${fault}`);
    }
    expect(faults).toEqual([]);
    expect(await fingerprint()).toBe(before);
  });

  it('refuses what is no form, and fields that are not its own', async () => {
    const before = await fingerprint();
    const extra = ['__proto__', 'constructor', 'societyId', 'role'].map((key) =>
      JSON.parse(JSON.stringify(inputOf(row)).replace(/\}$/, `, ${JSON.stringify(key)}: {"admin": true}}`)),
    );
    const faults: string[] = [];
    for (const input of [...extra, null, 'text', 7, [], [inputOf(row)]]) {
      const answer = await answerOf(row, input);
      const refused = typeof answer === 'object' && 'ok' in answer && !answer.ok ? answer.refusals : [];
      const words = refused.map(wordsFor);
      if (words.length === 0 || words.some((sentence) => raw.test(sentence)))
        faults.push(`${shown(input)}: ${words} ${shown(answer)}`);
    }
    expect(faults).toEqual([]);
    expect(await fingerprint()).toBe(before);
  });
});

describe.each(rows.map((row) => [row.name, row] as const))('%s', (_, row) => {
  it('takes what is right', async () => {
    await kept.restore();
    await row.first?.(world);
    expect(await answerOf(row, inputOf(row))).toMatchObject({ ok: true });
  });

  const fields = Object.entries(row.fields).filter(([, { good }]) => good.length);
  const edged = Object.entries(row.fields).filter(([, { edges }]) => edges);
  it.each(edged)('breaks over no end of %s', async (name, field) => {
    const faults: string[] = [];
    for (const value of field.edges ?? []) {
      await kept.restore();
      await row.first?.(world);
      const answer = await answerOf(row, putInto(row, name, field, value));
      const ok = typeof answer === 'object' && 'ok' in answer && answer.ok;
      const fault = ok ? null : faultOf(answer, plain(row.fields), false);
      if (fault) faults.push(`${value} ${fault}`);
    }
    expect(faults).toEqual([]);
  });

  it.each(fields)('keeps %s as it was typed', async (name, field) => {
    const faults: string[] = [];
    for (const [typed, value] of field.good) {
      await kept.restore();
      await row.first?.(world);
      const before = await kept.values();
      const answer = await answerOf(row, putInto(row, name, field, typed));
      if (typeof answer === 'string' || !('ok' in answer) || !answer.ok)
        faults.push(
          `${shown(typed)}: ${shown(answer)} ${typeof answer === 'object' && 'ok' in answer && !answer.ok ? answer.refusals.map(wordsFor) : ''}`,
        );
      else if (value !== null && !(await kept.changedSince(before)).has(value))
        faults.push(`${shown(typed)} is not kept`);
    }
    expect(faults).toEqual([]);
  });
});
