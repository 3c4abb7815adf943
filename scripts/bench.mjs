// The measurements: ratios taken side by side in one run, written to docs/. Never part of the tests.
// Some of them alone, not written: npm run bench -- pages memory. All of them shortly, not written: npm run bench -- --quick.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { build, generate, install, isBuilt, secrets, state } from './start/build.mjs';
import { gone, isAlive } from './start/ports.mjs';
import { Plain, step } from './start/steps.mjs';

async function prepare() {
  await step('Installing packages', install);
  await step('Making the database client', generate);
  if (!isBuilt() && isServing())
    throw new Plain('The service runs from this checkout with an older build. Stop it, then measure again.');
  await step('Building the service', () => build(secrets()));
}

// The build is replaced below a service that runs from here.
function isServing() {
  const record = path.join(state, 'web.json');
  return fs.existsSync(record) && isAlive(JSON.parse(fs.readFileSync(record, 'utf8')).pid);
}

async function run() {
  await prepare();
  const args = ['--expose-gc', '--conditions=react-server', '--import', 'tsx', 'tests/load/bench.ts'];
  const bench = spawn(process.execPath, [...args, ...process.argv.slice(2)], { stdio: 'inherit' });
  // It tidies up behind itself: we wait for that.
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => bench.kill(signal));
  await gone(bench);
  return bench.exitCode ?? 1;
}

process.exitCode = await run().catch((error) => {
  console.error(error instanceof Plain ? error.message : error);
  return 1;
});
