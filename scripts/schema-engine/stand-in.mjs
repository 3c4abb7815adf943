#!/usr/bin/env node
// Stands in for the engine that Prisma's command line would download: the same questions on standard input, one JSON
// object a line, answered by the engine's WebAssembly build of the same commit.
import fs from 'node:fs';
import readline from 'node:readline';
import { loadEngine } from './engine.mjs';

const argv = process.argv.slice(2);
const commit = '0edf323efd1d98336f3f0a68684b56f689b900d3';

if (argv.includes('--version') || argv.includes('-V')) {
  console.log(`schema-engine-cli ${commit}`);
  process.exit(0);
}
if (argv[0] === 'cli' || argv.includes('can-connect-to-database')) process.exit(0);

const engine = await loadEngine({ url: databaseUrl(), datamodels: datamodels() });
for await (const line of readline.createInterface({ input: process.stdin })) {
  const question = line.trim() ? JSON.parse(line) : {};
  if (question.method) await answer(question);
}

async function answer({ id, method, params }) {
  try {
    const result = await engine[method](params?.input ?? params ?? {});
    // The engine prints a difference as it goes; the WebAssembly build hands it back instead.
    if (method === 'diff' && result.stdout) send({ id: 900_000, method: 'print', params: { content: result.stdout } });
    send({ id, result: method === 'diff' ? { exitCode: result.exitCode, stdout: null } : (result ?? null) });
  } catch (error) {
    const data = { is_panic: false, message: error.message, meta: error.meta ?? null, error_code: error.code ?? null };
    send({ id, error: { code: 4466, message: 'An error happened. Check the data field for details.', data } });
  }
}

function send(message) {
  process.stdout.write(`${JSON.stringify({ jsonrpc: '2.0', ...message })}\n`);
}

function databaseUrl() {
  const at = argv.indexOf('--datasource');
  const given = at < 0 ? null : argv[at + 1];
  if (!given) return process.env.DATABASE_URL;
  const text = given.startsWith('{') ? given : Buffer.from(given, 'base64').toString('utf8');
  return JSON.parse(text).url ?? process.env.DATABASE_URL;
}

function datamodels() {
  const at = argv.findIndex((one) => one === '--datamodels' || one === '-d');
  if (at < 0) return undefined;
  const after = argv.slice(at + 1);
  const end = after.findIndex((one) => one.startsWith('-'));
  return (end < 0 ? after : after.slice(0, end)).map((file) => [file, fs.readFileSync(file, 'utf8')]);
}
