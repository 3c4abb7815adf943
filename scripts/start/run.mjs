// From a fresh clone to a running service.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, generate, install, quietEnv, secrets, state } from './build.mjs';
import { Plain, say, step } from './steps.mjs';

process.chdir(path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..'));

/** Start the service, or say in one sentence why not. */
export async function run(options) {
  const running = [];
  let stopping;
  // What was started last stops first.
  const stop = (code) => {
    stopping ??= (async () => {
      for (const one of running.reverse()) await one.stop();
      process.exit(code);
    })();
    return stopping;
  };
  process.on('SIGINT', () => stop(0));
  process.on('SIGTERM', () => stop(0));
  try {
    await start(options, running, stop);
  } catch (error) {
    // A step cut short by Ctrl-C is no failure.
    if (!stopping) console.error(error instanceof Plain ? `\n${error.message}` : error);
    await stop(1);
  }
}

async function start(options, running, stop) {
  const dev = options.includes('--dev');
  const empty = options.includes('--empty') || process.env.BARROWMOOT_DEMO === '0';
  await step('Installing packages', install);
  const { place, serve } = await import('./serve.mjs');
  const { startPostgres } = await import('./postgres.mjs');
  const { migrate, reach } = await import('./migrate.mjs');
  const { demoSignIns, loadFirstSociety } = await import('./society.mjs');
  const { host, port, address } = await place();
  const env = { ...quietEnv, NEXTAUTH_URL: address, ...secrets(), ...given('NEXTAUTH_URL', 'NEXTAUTH_SECRET') };
  if (process.env.DATABASE_URL) await reach(process.env.DATABASE_URL);
  await step('Making the database client', generate);
  if (!dev) await step('Building the service', () => build(env));
  env.DATABASE_URL = process.env.DATABASE_URL;
  if (!env.DATABASE_URL) {
    const server = await step('Starting PostgreSQL', () => startPostgres({ dir: path.join(state, 'pg') }));
    running.push(server);
    env.DATABASE_URL = server.url;
  }
  await step('Bringing the database up to date', () => migrate(env.DATABASE_URL));
  await loadFirstSociety(env, empty);
  const signIns = empty ? [] : demoSignIns();
  env.BARROWMOOT_DEMO = signIns.length ? '1' : '0';
  await step('Serving', () => serve({ dev, host, port, address, env }, running, stop));
  tell(address, signIns);
}

function given(...names) {
  return Object.fromEntries(names.filter((name) => process.env[name]).map((name) => [name, process.env[name]]));
}

function tell(address, signIns) {
  console.log(`\n  Barrowmoot is at ${address}\n`);
  if (signIns.length) console.log('  Demo sign-ins:');
  for (const { role, email, password } of signIns)
    console.log(`    ${role.padEnd(22)} ${email.padEnd(28)} ${password}`);
  console.log('\n  Ctrl-C stops it; nothing is lost.\n');
  say('ready');
}
