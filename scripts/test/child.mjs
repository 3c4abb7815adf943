// Commands of the test run: quiet while they go well, and stopped with it.
import { spawn } from 'node:child_process';
import { gone } from '../start/ports.mjs';

const running = new Set();

/** Run a file of Node's to its end. */
export async function node(file, args = [], env = {}) {
  const child = start(file, args, env);
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk) => {
      output += chunk;
    });
  }
  await new Promise((resolve) => child.once('close', resolve));
  return { code: child.exitCode ?? 1, output };
}

/**
 * Start a file of Node's and leave it running.
 *
 * @returns {import('node:child_process').ChildProcess}
 */
export function start(file, args = [], env = {}) {
  // A group of its own: Ctrl-C reaches us, and we stop everything in order.
  const options = { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'], detached: true };
  const child = spawn(process.execPath, [file, ...args], options);
  running.add(child);
  child.once('exit', () => running.delete(child));
  return child;
}

/** Stop one child, and whatever it has started; what does not go when it is told is ended. */
export async function kill(child) {
  if (child.exitCode !== null || child.signalCode) return;
  signal(child, 'SIGTERM');
  const end = setTimeout(() => signal(child, 'SIGKILL'), 20_000);
  await gone(child);
  clearTimeout(end);
}

function signal(child, name) {
  try {
    process.kill(-child.pid, name);
  } catch {
    child.kill(name);
  }
}

/** Stop all that still run. */
export async function killRunning() {
  await Promise.all([...running].map(kill));
}
