// A browser for the tests: the one that is there, or else the system's package, or else Playwright's own.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { Plain } from '../start/steps.mjs';

const usual = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The path of a Chromium; the empty string means the one that Playwright has installed. */
export async function findChromium() {
  const found = present();
  if (found) return found;
  const { chromium } = await import('@playwright/test');
  if (fs.existsSync(chromium.executablePath())) return '';
  if (process.getuid?.() === 0 && fs.existsSync('/etc/debian_version') && installedByApt()) return present() ?? '';
  if (ran('npx', ['playwright', 'install', 'chromium'])) return '';
  throw new Plain(
    'The browser tests need Chromium. Install it, or say where it is: CHROMIUM_PATH=/path/to/chromium npm test',
  );
}

function present() {
  return [process.env.CHROMIUM_PATH, ...usual].find((file) => file && fs.existsSync(file));
}

function installedByApt() {
  return (
    ran('apt-get', ['update', '-q']) && ran('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'])
  );
}

function ran(file, args) {
  try {
    execFileSync(file, args, { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
    return true;
  } catch {
    return false;
  }
}
