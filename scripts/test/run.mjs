// From a fresh clone to every test passed: each stage in turn, then one line with the count.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { generate, install } from '../start/build.mjs';
import { Plain, step } from '../start/steps.mjs';
import { killRunning } from './child.mjs';

process.chdir(path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..'));

/** Run the named stages, or all of them. */
export async function run(names) {
  try {
    await step('Installing packages', install);
    await step('Making the database client', generate);
    const { stages } = await import('./stages.mjs');
    const unknown = names.filter((name) => !(name in stages));
    if (unknown.length)
      throw new Plain(`There is no stage ${unknown.join(', ')}. There are: ${Object.keys(stages).join(', ')}.`);
    process.exitCode = await runStages(stages, names.length ? names : Object.keys(stages));
  } catch (error) {
    console.error(error instanceof Plain ? error.message : error);
    process.exitCode = 1;
  }
}

async function runStages(stages, names) {
  const { postgres, stopPostgres } = sharedPostgres();
  const interrupted = async () => {
    await killRunning();
    await stopPostgres();
    process.exit(130);
  };
  process.once('SIGINT', interrupted);
  process.once('SIGTERM', interrupted);
  const total = { passed: 0, failed: 0 };
  const broken = [];
  for (const name of names) {
    const { title, work } = stages[name];
    const outcome = await step(title, () => work(postgres)).catch((error) => ({
      passed: 0,
      failed: 1,
      report: plainly(error),
    }));
    total.passed += outcome.passed;
    total.failed += outcome.failed;
    if (!outcome.failed) continue;
    broken.push(name);
    console.log(`${outcome.report.trimEnd()}\n`);
  }
  await stopPostgres();
  if (broken.length) console.log(`Failed: ${broken.join(', ')}. One stage alone: npm test -- ${broken[0]}`);
  console.log(`${total.passed} passed, ${total.failed} failed`);
  return total.failed ? 1 : 0;
}

function plainly(error) {
  return error instanceof Plain ? error.message : (error.stack ?? String(error));
}

/** One server for all stages, started when the first of them asks for it. */
function sharedPostgres() {
  let server;
  const postgres = async () => {
    server ??= import('./throwaway-postgres.mjs').then(({ startThrowawayPostgres }) => startThrowawayPostgres());
    return server;
  };
  return { postgres, stopPostgres: async () => (await server)?.stop() };
}
