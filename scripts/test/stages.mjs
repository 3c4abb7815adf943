// The stages of `npm test`, in order: what is quick to fail comes first.
import fs from 'node:fs';
import { quietEnv } from '../start/build.mjs';
import { browser } from './browser.mjs';
import { buildForTests } from './build.mjs';
import { node } from './child.mjs';
import { vitest } from './vitest.mjs';

const bin = {
  biome: 'node_modules/@biomejs/biome/bin/biome',
  eslint: 'node_modules/eslint/bin/eslint.js',
  next: 'node_modules/next/dist/bin/next',
  tsc: 'node_modules/typescript/bin/tsc',
  cruiser: 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
  knip: 'node_modules/knip/bin/knip.js',
  prisma: 'scripts/prisma.mjs',
};

const noFailure = { passed: 0, failed: 0, report: '' };

export const stages = {
  format: stage('Looking at the format', () => check(bin.biome, ['format', '.'])),
  lint: stage('Looking for slips', () => check(bin.eslint, ['.', '--max-warnings', '0'])),
  types: stage('Checking types', checkTypes),
  arrows: stage('Checking who leans on whom', checkArrows),
  unused: stage('Looking for what nobody uses', () => check(bin.knip, ['--no-progress'])),
  drift: stage('Comparing migrations with the schema', checkDrift),
  unit: stage('Testing the maths and the forms', () => vitest(['unit'])),
  published: stage('Checking against published figures', () => vitest(['published'])),
  zones: stage('Testing the maths in other time zones', testZones),
  integration: stage('Testing operations on PostgreSQL', (postgres) => vitest(['integration'], postgres)),
  access: stage('Testing who may do what', (postgres) => vitest(['access'], postgres)),
  build: stage('Building the service', buildForTests),
  browser: stage('Testing in the browser', browser),
};

function stage(title, work) {
  return { title, work };
}

async function check(file, args, env) {
  const { code, output } = await node(file, args, env);
  return code === 0 ? noFailure : { passed: 0, failed: 1, report: output };
}

async function checkTypes() {
  // Fresh clones have none of the types that Next writes for routes and style sheets.
  const made = await check(bin.next, ['typegen'], quietEnv);
  return made.failed ? made : check(bin.tsc, ['-p', 'tsconfig.test.json']);
}

async function checkArrows() {
  const roots = ['app', 'lib', 'seeds', 'tests', 'proxy.ts'].filter((root) => fs.existsSync(root));
  const { code, output } = await node(bin.cruiser, ['--config', '.dependency-cruiser.cjs', ...roots]);
  // It also passes when it could read nothing.
  const seen = Number(/(\d+) modules/.exec(output)?.[1] ?? 0);
  if (code === 0 && seen > 0) return noFailure;
  return { passed: 0, failed: 1, report: seen ? output : `No module was looked at.\n${output}` };
}

async function checkDrift(postgres) {
  const { url } = await postgres();
  const diff = ['migrate', 'diff', '--from-migrations', 'prisma/migrations', '--to-schema', 'prisma/schema.prisma'];
  return check(bin.prisma, [...diff, '--exit-code'], { DATABASE_URL: url });
}

async function testZones() {
  const outcomes = [];
  for (const TZ of ['Pacific/Auckland', 'America/Los_Angeles']) {
    outcomes.push(await vitest(['unit', 'published'], undefined, { TZ }, ['lib/domain', 'tests/published']));
  }
  // The same tests again: they count once, unless they fail here.
  return { passed: 0, failed: sum(outcomes, 'failed'), report: outcomes.map((one) => one.report).join('\n') };
}

function sum(list, key) {
  return list.reduce((total, one) => total + one[key], 0);
}
