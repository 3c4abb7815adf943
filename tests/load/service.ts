import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import http from 'node:http';
import { kill, start } from '../../scripts/test/child.mjs';
import { quietEnv, secrets } from '../../scripts/start/build.mjs';
import { freePort } from '../../scripts/start/ports.mjs';
import { memoryEnv } from '../../scripts/start/serve.mjs';
import { hangUp } from './http';

/** Sessions of a measurement are worth nothing anywhere else. */
export const sessionSecret = 'only the measurements know this secret';

export type Service = { readonly address: string; readonly pid: number; readonly stop: () => Promise<void> };
type Env = Readonly<Record<string, string>>;

/** Serve a database with the build that is there, and wait until it answers. */
export async function serve(databaseUrl: string, more: Env = {}): Promise<Service> {
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const env = {
    ...quietEnv,
    ...secrets(),
    NEXTAUTH_SECRET: sessionSecret,
    NEXTAUTH_URL: address,
    DATABASE_URL: databaseUrl,
    NODE_ENV: 'production',
    TZ: 'UTC',
    ...memoryEnv(),
    ...more,
  };
  // Connections wait while the others have their turn.
  const args = ['start', '-H', '127.0.0.1', '-p', String(port), '--keepAliveTimeout', '600000'];
  return run('node_modules/next/dist/bin/next', args, env, `${address}/api/health`);
}

/** Start a program of Node's and wait until it answers at an address. */
export async function run(file: string, args: string[], env: Env, until: string): Promise<Service> {
  const child = start(file, args, env);
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream?.on('data', (chunk) => {
      said = (said + chunk).slice(-6000);
    });
  const late = performance.now() + 120_000;
  while (!(await answers(until))) {
    if (child.exitCode !== null || performance.now() > late) throw new Error(`${file} did not come up:\n${said}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  return { address: new URL(until).origin, pid: child.pid ?? 0, stop: () => (hangUp(), kill(child)) };
}

function answers(url: string): Promise<boolean> {
  return new Promise((resolve) => {
    // A connection of its own, closed at once: a server waits for open ones before it stops.
    const request = http.get(url, { agent: false }, (response) => {
      response.resume();
      resolve(response.statusCode === 200);
    });
    request.on('error', () => resolve(false));
  });
}

/** What a process holds in memory [MB]. */
export function residentMb(pid: number): number {
  const status = `/proc/${pid}/status`;
  const kilobytes = fs.existsSync(status)
    ? /VmRSS:\s+(\d+)/.exec(fs.readFileSync(status, 'utf8'))?.[1]
    : execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' });
  return Number(kilobytes) / 1024;
}
