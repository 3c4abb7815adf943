// What a new database is filled with: the demo society, or an empty one.
import fs from 'node:fs';
import path from 'node:path';
import pg from 'pg';
import { state } from './build.mjs';
import { command, step } from './steps.mjs';

/** Load a society into a database that has none. */
export async function loadFirstSociety(env, empty) {
  const client = new pg.Client({ connectionString: env.DATABASE_URL });
  await client.connect();
  const { rowCount } = await client.query('SELECT 1 FROM "Society" LIMIT 1');
  await client.end();
  if (rowCount) return;
  const title = empty ? 'Making an empty society' : 'Loading the demo society';
  const seed = empty ? 'seeds/load-empty.ts' : 'seeds/load-demo.ts';
  const told = await step(title, () =>
    command(process.execPath, ['--conditions=react-server', '--import', 'tsx', seed], env),
  );
  // The link for its first secretary is told once, here.
  if (empty) console.log(told);
}

/** Who may try the demo society; none when it was not loaded. */
export function demoSignIns() {
  const file = path.join(state, 'demo-sign-ins.json');
  return fs.existsSync(file) ? JSON.parse(fs.readFileSync(file, 'utf8')) : [];
}
