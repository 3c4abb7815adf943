// Runs projects of vitest.config.ts and counts what passed.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { node } from './child.mjs';

/**
 * @param {string[]} projects
 * @param {(() => Promise<{ url: string }>) | undefined} postgres  for projects on the database
 * @param {Record<string, string>} env
 * @param {string[]} files  only files whose path contains one of these
 */
export async function vitest(projects, postgres, env = { TZ: 'UTC' }, files = []) {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'barrowmoot-count-'));
  // Gone even when the run is cut short.
  process.once('exit', () => fs.rmSync(folder, { recursive: true, force: true }));
  const counted = path.join(folder, 'vitest.json');
  const chosen = projects.flatMap((name) => ['--project', name]);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${counted}`];
  const server = postgres ? { TEST_PG_URL: (await postgres()).url } : {};
  const run = ['run', ...chosen, ...reporters, ...files];
  const { code, output } = await node('node_modules/vitest/vitest.mjs', run, { ...env, ...server, NO_COLOR: '1' });
  const count = fs.existsSync(counted)
    ? countOf(JSON.parse(fs.readFileSync(counted, 'utf8')))
    : { passed: 0, failed: 0 };
  // Something may go wrong outside any one test.
  if (code !== 0 && count.failed === 0) count.failed = 1;
  return { ...count, report: count.failed ? output : '' };
}

function countOf({ numPassedTests, numFailedTests, testResults }) {
  // A file that could not be read has failed without holding a single test.
  const unread = testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
  return { passed: numPassedTests, failed: numFailedTests + unread };
}
