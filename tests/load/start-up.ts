import fs from 'node:fs';
import path from 'node:path';
import { state } from '../../scripts/start/build.mjs';
import { freePort } from '../../scripts/start/ports.mjs';
import { say } from '../../scripts/start/steps.mjs';
import { run, serve } from './service';
import { figure, type Section, times } from './table';

/** From `npm start` to the first answer where everything was made before, beside the bare server of the same build. */
export async function measureStartUp(databaseUrl: string, folder: string): Promise<Section> {
  say('start-up: a first start, which loads the demo society');
  const home = installation(folder);
  await (await start(home)).stop();
  const [ours, theirs]: [number[], number[]] = [[], []];
  for (let turn = 1; turn <= 3; turn++) {
    say(`start-up: turn ${turn} of 3`);
    ours.push(await untilUp(() => start(home)));
    theirs.push(await untilUp(() => serve(databaseUrl)));
  }
  const [one, other] = [middle(ours), middle(theirs)];
  return {
    title: 'Starting up',
    heads: ['second `npm start`, s', 'bare `next start`, s', 'times bare'],
    rows: [[figure(one, 2), figure(other, 2), times(one, other)]],
    notes: [
      'To the first answered request; middle of three. `npm start` looks whether packages, client and build are fresh, starts PostgreSQL and brings the database up to date; the bare server finds a database running.',
    ],
  };
}

// An installation of its own that takes this build for its own, so that whatever runs from this checkout is left alone.
function installation(folder: string): string {
  const home = path.join(folder, 'state');
  fs.mkdirSync(home, { mode: 0o711 });
  for (const file of ['client.stamp', 'build.stamp', 'secrets.json'])
    fs.copyFileSync(path.join(state, file), path.join(home, file));
  return home;
}

async function start(home: string) {
  const port = await freePort();
  const npm = process.env.npm_execpath;
  const [file, args] = npm ? [npm, ['start']] : ['scripts/start.mjs', []];
  const env = { BARROWMOOT_STATE: home, PORT: String(port), HOST: '127.0.0.1', DATABASE_URL: '', NEXTAUTH_URL: '' };
  return run(file, args, env, `http://127.0.0.1:${port}/api/health`);
}

async function untilUp(begin: () => Promise<{ stop: () => Promise<void> }>): Promise<number> {
  const from = performance.now();
  const { stop } = await begin();
  const seconds = (performance.now() - from) / 1000;
  await stop();
  return seconds;
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}
