// The service itself: where it listens, and that it is up.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { state } from './build.mjs';
import { answers, gone, isAlive } from './ports.mjs';
import { Plain } from './steps.mjs';

const record = path.join(state, 'web.json');

/** Where to listen, from PORT and HOST; a port taken by somebody else ends the start. */
export async function place() {
  const port = Number(process.env.PORT ?? 3000);
  const host = process.env.HOST ?? '127.0.0.1';
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new Plain(`PORT is ${process.env.PORT}; give a number from 1 to 65535.`);
  const everywhere = host === '0.0.0.0' || host === '::';
  const near = everywhere ? '127.0.0.1' : host;
  await endOrphan(port);
  if (await answers(port, near))
    throw new Plain(`Port ${port} is taken by another program. Give another: PORT=${port + 1} npm start`);
  return { host, port, address: `http://${everywhere ? 'localhost' : host}:${port}` };
}

// A start that was killed outright could not stop its service.
async function endOrphan(port) {
  if (!fs.existsSync(record)) return;
  const last = JSON.parse(fs.readFileSync(record, 'utf8'));
  if (last.port !== port || isAlive(last.owner) || !isAlive(last.pid)) return;
  const told = fs.existsSync(`/proc/${last.pid}/cmdline`) ? fs.readFileSync(`/proc/${last.pid}/cmdline`, 'utf8') : '';
  // The system may have given its number to somebody else since.
  if (!told.includes('next')) return;
  process.kill(last.pid, 'SIGTERM');
  for (let tries = 0; tries < 100 && isAlive(last.pid); tries++) await pause();
}

/** Left alone, Node lets garbage lie until gigabytes are full: the service is told to clear away sooner. */
export function memoryEnv() {
  const megabytes = Number(process.env.MEMORY_MB ?? 768);
  if (!Number.isInteger(megabytes) || megabytes < 128)
    throw new Plain(`MEMORY_MB is ${process.env.MEMORY_MB}; give whole megabytes from 128.`);
  return { NODE_OPTIONS: `${process.env.NODE_OPTIONS ?? ''} --max-old-space-size=${megabytes}`.trim() };
}

/** Serve, and wait until it answers. Its later end ends the start command too. */
export async function serve({ dev, host, port, address, env }, running, stop) {
  const args = ['node_modules/next/dist/bin/next', dev ? 'dev' : 'start', '-H', host, '-p', String(port)];
  // A group of its own, so that Ctrl-C stops it through us and in order.
  const web = spawn(process.execPath, args, {
    stdio: ['ignore', dev ? 'inherit' : 'ignore', 'inherit'],
    detached: true,
    env: { ...process.env, ...env, ...memoryEnv(), NODE_ENV: dev ? 'development' : 'production' },
  });
  running.push({ stop: () => (web.kill('SIGTERM'), gone(web)) });
  fs.writeFileSync(record, JSON.stringify({ port, pid: web.pid, owner: process.pid }));
  web.once('exit', (code) => stop(code ?? 1));
  for (let tries = 0; tries < 1200; tries++) {
    if (web.exitCode !== null || web.signalCode) throw new Plain('The service stopped as soon as it was started.');
    const up = await fetch(`${address}/api/health`).then(
      (response) => response.ok,
      () => false,
    );
    if (up) return;
    await pause();
  }
  throw new Plain('The service did not come up within two minutes.');
}

function pause() {
  return new Promise((resolve) => setTimeout(resolve, 100));
}
