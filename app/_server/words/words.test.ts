import fs from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';

// Two areas with one code would both be right to the compiler, and the words of the later one would speak for both.
it('no code of a refusal is of two areas', async () => {
  const files = fs
    .readdirSync(import.meta.dirname)
    .filter((name) => /^(?!dated|shape)[a-z-]+\.ts$/.test(name) && !name.includes('.test.'));
  const modules = await Promise.all(files.map((name) => import(path.join(import.meta.dirname, name))));
  const codes = modules
    .flatMap((module) => Object.values(module as object))
    .flatMap((words) => Object.keys(words as object));
  expect(codes.length).toBeGreaterThan(150);
  expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([]);
});
