// From a fresh clone to a running service.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, generate, install, quietEnv, secrets } from './build.mjs';
import { command, Plain, say, step } from './steps.mjs';

process.chdir(path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..'));

export async function run(options) {
  try {
    await start({
      dev: options.includes('--dev'),
      empty: options.includes('--empty') || process.env.BARROWMOOT_DEMO === '0',
    });
  } catch (error) {
    console.error(error instanceof Plain ? `\n${error.message}` : error);
    process.exit(1);
  }
}

async function start({ dev, empty }) {
  const port = Number(process.env.PORT ?? 3000);
  const host = process.env.HOST ?? '127.0.0.1';
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new Plain(`PORT is ${process.env.PORT}; give a number from 1 to 65535.`);
  await step('Installing packages', install);
  const { answers, gone, startPostgres } = await import('./postgres.mjs');
  const { migrate } = await import('./migrate.mjs');
  if (await answers(port, host === '0.0.0.0' ? '127.0.0.1' : host))
    throw new Plain(`Port ${port} is taken by another program. Give another: PORT=${port + 1} npm start`);
  await step('Making the database client', generate);
  const address = `http://${host === '0.0.0.0' ? 'localhost' : host}:${port}`;
  const env = {
    ...quietEnv,
    NEXTAUTH_URL: address,
    ...secrets(),
    ...set('NEXTAUTH_URL', 'NEXTAUTH_SECRET', 'NEXT_SERVER_ACTIONS_ENCRYPTION_KEY'),
  };
  if (!dev) await step('Building the service', () => build(env));
  let server;
  let web;
  let stopping = false;
  const stop = async (code) => {
    if (stopping) return;
    stopping = true;
    web?.kill('SIGTERM');
    if (web) await gone(web);
    await server?.stop();
    process.exit(code);
  };
  process.on('SIGINT', () => stop(0));
  process.on('SIGTERM', () => stop(0));
  if (!process.env.DATABASE_URL) server = await step('Starting PostgreSQL', () => startPostgres({ dir: '.data/pg' }));
  env.DATABASE_URL = process.env.DATABASE_URL ?? server.url;
  try {
    await step('Bringing the database up to date', () => migrate(env.DATABASE_URL));
    await loadFirstSociety(env, empty);
    if (!empty && fs.existsSync('.data/demo-sign-ins.json')) env.BARROWMOOT_DEMO = '1';
    const next = ['node_modules/next/dist/bin/next', dev ? 'dev' : 'start', '-H', host, '-p', String(port)];
    // A group of its own, so that Ctrl-C stops it through us and in order.
    web = spawn(process.execPath, next, {
      stdio: ['ignore', dev ? 'inherit' : 'ignore', 'inherit'],
      detached: true,
      env: { ...process.env, ...env, NODE_ENV: dev ? 'development' : 'production' },
    });
    web.once('exit', (code) => stop(code ?? 1));
    await step('Serving', () => untilHealthy(`${address}/api/health`, () => stopping));
  } catch (error) {
    console.error(error instanceof Plain ? `\n${error.message}` : error);
    return stop(1);
  }
  tell(address, env.BARROWMOOT_DEMO === '1');
}

function set(...names) {
  return Object.fromEntries(names.filter((name) => process.env[name]).map((name) => [name, process.env[name]]));
}

async function loadFirstSociety(env, empty) {
  const { default: pg } = await import('pg');
  const client = new pg.Client({ connectionString: env.DATABASE_URL });
  await client.connect();
  const { rowCount } = await client.query('SELECT 1 FROM "Society" LIMIT 1');
  await client.end();
  if (rowCount) return;
  const seed = empty ? 'seeds/load-empty.ts' : 'seeds/load-demo.ts';
  const run = ['--conditions=react-server', '--import', 'tsx', seed];
  const told = await step(empty ? 'Making an empty society' : 'Loading the demo society', () =>
    command(process.execPath, run, env),
  );
  if (empty) console.log(told);
}

async function untilHealthy(url, given) {
  for (let tries = 0; tries < 1200 && !given(); tries++) {
    const up = await fetch(url).then(
      (response) => response.ok,
      () => false,
    );
    if (up) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  if (!given()) throw new Plain('The service did not come up within two minutes.');
}

function tell(address, demo) {
  console.log(`\n  Barrowmoot is at ${address}\n`);
  if (demo) {
    console.log('  Demo sign-ins:');
    for (const { role, email, password } of JSON.parse(fs.readFileSync('.data/demo-sign-ins.json', 'utf8')))
      console.log(`    ${role.padEnd(22)} ${email.padEnd(28)} ${password}`);
  }
  console.log('\n  Ctrl-C stops it; nothing is lost.\n');
  say('ready');
}
