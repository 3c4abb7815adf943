import { execFileSync } from 'node:child_process';
import pg from 'pg';
import { template } from '../../scripts/test/throwaway-postgres.mjs';

export type Server = { readonly url: string; readonly urlOf: (database: string) => string };

export type Wanted = {
  readonly societies: number;
  readonly plots: number;
  readonly beds?: number;
  readonly seasons?: number;
};

/** A database of its own with so many societies; 8 beds a plot and 6 seasons on record unless told otherwise. */
export async function loadDatabase(
  server: Server,
  { societies, plots, beds = 8, seasons = 6 }: Wanted,
): Promise<string> {
  const name = `bench_${societies}_${plots}`;
  const client = new pg.Client({ connectionString: server.url });
  await client.connect();
  await client.query(`CREATE DATABASE ${name} TEMPLATE ${template}`);
  await client.end();
  const size = ['--societies', String(societies), '--plots', String(plots)];
  size.push('--beds', String(beds), '--seasons', String(seasons));
  execFileSync(process.execPath, ['--conditions=react-server', '--import', 'tsx', 'seeds/load-large.ts', ...size], {
    env: { ...process.env, DATABASE_URL: server.urlOf(name) },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return server.urlOf(name);
}
