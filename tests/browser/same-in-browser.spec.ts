import fs from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import type { Claim } from '../../lib/domain/sharing/claim';
import { commitmentOf } from '../../lib/domain/sharing/lot';
import { type ShareOutInputs, workAgain } from '../../lib/domain/sharing/work-again';
import { chanceFrom } from '../fixtures/chance';
import { expect, test } from './test';

const instances = 400;
const home = 'http://same.test/';

/** A made-up delivery: many or few claims, credits, loads collected already, some who came late. */
function instanceOf(seed: number): ShareOutInputs {
  const { whole } = chanceFrom(seed);
  const claims = Array.from({ length: whole(1, 60) }, (_, at): Claim => {
    const asked = whole(0, 12);
    return {
      id: `claim ${at}`,
      asked,
      need: whole(0, 10),
      creditMillionths: whole(-1_000_000, 1_000_000),
      ...(whole(0, 4) === 0 ? { collected: whole(0, asked) } : {}),
      ...(whole(0, 5) === 0 ? { late: at } : {}),
    };
  });
  const collected = claims.reduce((sum, claim) => sum + (claim.collected ?? 0), 0);
  const bytesHex = Array.from({ length: 64 }, () => whole(0, 15).toString(16)).join('');
  return {
    deliveryId: `delivery ${seed}`,
    bytesHex,
    commitment: commitmentOf(bytesHex),
    loads: collected + whole(0, 240),
    claims,
    frozen: claims
      .filter(({ late }) => late === undefined)
      .map(({ id, asked, need, creditMillionths }) => ({ id, asked, need, creditMillionths })),
  };
}

/** The same source files, each stripped of its types alone and served as the module that it is. */
function moduleAt(pathname: string): string {
  const file = path.join(process.cwd(), pathname);
  if (file.endsWith('.js')) return fs.readFileSync(file, 'utf8');
  const { outputText } = ts.transpileModule(fs.readFileSync(`${file}.ts`, 'utf8'), {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
  });
  return outputText;
}

test('a share-out worked out in a browser is the server’s, to the last millionth', async ({ page }) => {
  const importmap = JSON.stringify({ imports: { '@noble/hashes/': '/node_modules/@noble/hashes/' } });
  const paper = `<!doctype html><title>Same</title><link rel="icon" href="data:,"><script type="importmap">${importmap}</script>`;
  await page.route(`${home}**`, (route) => {
    const { pathname } = new URL(route.request().url());
    return pathname === '/'
      ? route.fulfill({ contentType: 'text/html', body: paper })
      : route.fulfill({ contentType: 'text/javascript', body: moduleAt(pathname) });
  });
  await page.goto(home);
  const given = Array.from({ length: instances }, (_, seed) => instanceOf(seed));
  const here = given.map((inputs) => JSON.stringify(workAgain(inputs, [])));
  expect(new Set(here).size).toBe(instances);
  const there = await page.evaluate(async (all) => {
    const address = '/lib/domain/sharing/work-again';
    const { workAgain } = await import(address);
    return all.map((inputs) => JSON.stringify(workAgain(inputs, [])));
  }, given);
  expect(there).toEqual(here);
});
