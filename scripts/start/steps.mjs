// Steps with progress: one line each, and a sign of life on anything over two seconds.
import { spawn } from 'node:child_process';

const begun = Date.now();

/** A failure that is the reader's to mend: one clear sentence, no stack. */
export class Plain extends Error {}

export function say(text) {
  console.log(`[${((Date.now() - begun) / 1000).toFixed(1).padStart(6)} s] ${text}`);
}

/** Run one step, saying what it is, that it still goes on, and that it is done. */
export async function step(name, work) {
  const from = Date.now();
  const goingOn = () => say(`${name}: still at it, ${Math.round((Date.now() - from) / 1000)} s`);
  const first = setTimeout(() => say(`${name} …`), 2000);
  const still = setInterval(goingOn, 5000);
  try {
    const result = await work();
    if (result !== 'nothing to do') say(name);
    return result;
  } catch (error) {
    const said = `${error?.code} ${error?.message} ${error?.stderr ?? ''}`;
    if (/ENOSPC|No space left/.test(said))
      throw new Plain(
        `The disk is full: there was no room left while ${name.charAt(0).toLowerCase()}${name.slice(1)}.`,
      );
    throw error;
  } finally {
    clearTimeout(first);
    clearInterval(still);
  }
}

/** Run a command quietly; its output is shown only when it fails. */
export function command(file, args, env = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(file, args, { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    // Whatever ends us ends it too.
    const end = () => child.kill('SIGTERM');
    process.once('exit', end);
    child.once('exit', () => process.off('exit', end));
    let output = '';
    const keep = (chunk) => {
      output += chunk;
    };
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    child.on('error', reject);
    child.on('exit', (code) =>
      code === 0 ? resolve(output) : reject(new Error(`${file} ${args.join(' ')} failed:\n${output.slice(-6000)}`)),
    );
  });
}
