import { defineConfig } from 'prisma/config';

export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  // Generating needs no database; drafting a migration is given one by scripts/prisma.mjs.
  datasource: { url: process.env.DATABASE_URL ?? '' },
});
