// What must be made before serving: packages, the database client, the build. Each only when something changed.
import { createHash, randomBytes } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { command } from './steps.mjs';

/** Where this installation keeps what is its own. */
export const state = process.env.BARROWMOOT_STATE ?? '.data';

export const quietEnv = {
  NEXT_TELEMETRY_DISABLED: '1',
  PRISMA_HIDE_UPDATE_MESSAGE: '1',
  // Any executable will do: generating needs no engine, and this keeps Prisma from looking for one to download.
  PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
};

/** Install the locked packages, unless these are they. */
export async function install() {
  const made = 'node_modules/.package-lock.json';
  if (fs.existsSync(made) && fs.statSync(made).mtimeMs >= fs.statSync('package-lock.json').mtimeMs - 1000)
    return 'nothing to do';
  await command('npm', ['ci', '--no-audit', '--no-fund']);
  // An unchanged tree keeps its old time: say that it is as new as the lock.
  fs.utimesSync(made, new Date(), new Date());
}

/** Generate the database client, when the schema changed. */
export function generate() {
  return whenChanged(
    'client',
    ['prisma/schema.prisma', 'package-lock.json'],
    fs.existsSync('generated/prisma/client.ts'),
    () => command(process.execPath, ['node_modules/prisma/build/index.js', 'generate'], quietEnv),
  );
}

const built = [
  'app',
  'lib',
  'public',
  'proxy.ts',
  'instrumentation.ts',
  'next.config.ts',
  'postcss.config.mjs',
  'tsconfig.json',
  'prisma/schema.prisma',
  'package-lock.json',
];

/** Whether the build is that of the sources as they are. */
export function isBuilt() {
  return isFresh('build', fingerprint(built), fs.existsSync('.next/BUILD_ID'));
}

/** Build the service, when its sources changed. */
export function build(env) {
  return whenChanged('build', built, fs.existsSync('.next/BUILD_ID'), () =>
    command(process.execPath, ['node_modules/next/dist/bin/next', 'build'], {
      ...quietEnv,
      ...env,
      NODE_ENV: 'production',
    }),
  );
}

async function whenChanged(name, sources, present, make) {
  const now = fingerprint(sources);
  if (isFresh(name, now, present)) return 'nothing to do';
  await make();
  fs.mkdirSync(state, { recursive: true });
  fs.writeFileSync(stampOf(name), now);
}

function isFresh(name, now, present) {
  const stamp = stampOf(name);
  return present && fs.existsSync(stamp) && fs.readFileSync(stamp, 'utf8') === now;
}

function stampOf(name) {
  return path.join(state, `${name}.stamp`);
}

function fingerprint(sources) {
  const hash = createHash('sha256');
  for (const file of sources.flatMap(filesBelow)) hash.update(file).update(fs.readFileSync(file));
  return hash.digest('hex');
}

function filesBelow(at) {
  if (!fs.existsSync(at)) return [];
  if (!fs.statSync(at).isDirectory()) return [at];
  return fs
    .readdirSync(at, { recursive: true })
    .map((name) => path.join(at, name))
    .filter((file) => fs.statSync(file).isFile() && !/\.test\.tsx?$/.test(file))
    .sort();
}

/** Secrets of this installation, made on first start and never in the repository. */
export function secrets() {
  const file = path.join(state, 'secrets.json');
  fs.mkdirSync(state, { recursive: true });
  if (!fs.existsSync(file)) {
    const secret = () => randomBytes(32).toString('base64');
    fs.writeFileSync(
      file,
      JSON.stringify({ NEXTAUTH_SECRET: secret(), NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: secret() }),
      { mode: 0o600 },
    );
  }
  return JSON.parse(fs.readFileSync(file, 'utf8'));
}
