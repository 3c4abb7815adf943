// Browser tests: the built service on a database of its own with the demo society, and Playwright.
import { randomBytes } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { quietEnv, secrets } from '../start/build.mjs';
import { freePort } from '../start/ports.mjs';
import { buildForTests } from './build.mjs';
import { kill, node, start } from './child.mjs';
import { findChromium } from './chromium.mjs';
import { template } from './throwaway-postgres.mjs';

const database = 'barrowmoot_browser';

export async function browser(postgres) {
  if (!fs.existsSync('tests/browser')) return { passed: 0, failed: 0, report: '' };
  const chromium = await findChromium();
  await buildForTests();
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'barrowmoot-browser-'));
  const env = await environment(await postgres(), folder);
  let web;
  try {
    await must(node('--conditions=react-server', ['--import', 'tsx', 'seeds/load-demo.ts'], env));
    web = await serve(env);
    return await playwright({ ...env, CHROMIUM_PATH: chromium }, folder);
  } finally {
    if (web) await kill(web);
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

async function environment(server, folder) {
  const client = new pg.Client({ connectionString: server.url });
  await client.connect();
  await client.query(`CREATE DATABASE ${database} TEMPLATE ${template}`);
  await client.end();
  return {
    ...quietEnv,
    ...secrets(),
    // Sessions of the tests are worth nothing anywhere else.
    NEXTAUTH_SECRET: randomBytes(32).toString('base64'),
    NEXTAUTH_URL: `http://127.0.0.1:${await freePort()}`,
    DATABASE_URL: server.urlOf(database),
    BARROWMOOT_STATE: folder,
    BARROWMOOT_DEMO: '1',
    BARROWMOOT_TEST: '1',
    TZ: 'UTC',
  };
}

async function serve(env) {
  const { port } = new URL(env.NEXTAUTH_URL);
  const args = ['start', '-H', '127.0.0.1', '-p', port];
  const web = start('node_modules/next/dist/bin/next', args, { ...env, NODE_ENV: 'production' });
  let said = '';
  for (const stream of [web.stdout, web.stderr]) {
    stream.on('data', (chunk) => {
      said = (said + chunk).slice(-6000);
    });
  }
  for (let tries = 0; tries < 600; tries++) {
    if (web.exitCode !== null) break;
    const up = await fetch(`${env.NEXTAUTH_URL}/api/health`).then(
      (response) => response.ok,
      () => false,
    );
    if (up) return web;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  await kill(web);
  throw new Error(`the service did not come up:\n${said}`);
}

async function playwright(env, folder) {
  const counted = path.join(folder, 'playwright.json');
  const args = ['test', '--reporter=list,json'];
  const { code, output } = await node('node_modules/@playwright/test/cli.js', args, {
    ...env,
    // Factories and the log-in fixture are server code.
    NODE_OPTIONS: '--conditions=react-server',
    PLAYWRIGHT_JSON_OUTPUT_FILE: counted,
    NO_COLOR: '1',
  });
  const stats = fs.existsSync(counted)
    ? JSON.parse(fs.readFileSync(counted, 'utf8')).stats
    : { expected: 0, flaky: 0, unexpected: 0 };
  const failed = stats.unexpected || (code === 0 ? 0 : 1);
  return { passed: stats.expected + stats.flaky, failed, report: failed ? output : '' };
}

async function must(running) {
  const { code, output } = await running;
  if (code !== 0) throw new Error(output);
}
