import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = import.meta.dirname;

/** Tests that use the database: each file has one of its own, cloned from a migrated template. */
const onPostgres = {
  globalSetup: ['tests/setup/throwaway-postgres.ts'],
  setupFiles: ['tests/setup/own-database.ts'],
  testTimeout: 60_000,
  hookTimeout: 60_000,
};

export default defineConfig({
  resolve: { alias: { '@': root, 'server-only': path.join(root, 'tests/setup/empty.ts') } },
  test: {
    pool: 'forks',
    // A database and a browser want their share of a small machine too.
    maxWorkers: 2,
    testTimeout: 60_000,
    projects: [
      { extends: true, test: { name: 'unit', include: ['{lib,app,seeds}/**/*.test.{ts,tsx}'] } },
      { extends: true, test: { name: 'published', include: ['tests/published/**/*.test.ts'] } },
      { extends: true, test: { name: 'integration', include: ['tests/integration/**/*.test.ts'], ...onPostgres } },
      { extends: true, test: { name: 'access', include: ['tests/access/**/*.test.ts'], ...onPostgres } },
    ],
  },
});
