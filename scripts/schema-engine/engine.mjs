// Prisma's schema engine as WebAssembly, on PostgreSQL.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { migrationAdapter } from './adapter.mjs';

const require = createRequire(import.meta.url);

/** The engine, ready to be asked. */
export async function loadEngine({ url, datamodels }) {
  globalThis.PRISMA_WASM_PANIC_REGISTRY ??= {
    set_message: (message) => process.stderr.write(`The schema engine gave up: ${message}\n`),
  };
  const bound = await import('@prisma/schema-engine-wasm/schema_engine_bg');
  const file = path.join(path.dirname(require.resolve('@prisma/schema-engine-wasm')), 'schema_engine_bg.wasm');
  const { instance } = await WebAssembly.instantiate(fs.readFileSync(file), { './schema_engine_bg.js': bound });
  bound.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();
  return bound.SchemaEngine.new({ datamodels }, () => {}, await migrationAdapter(url));
}
