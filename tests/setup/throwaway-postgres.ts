import { startThrowawayPostgres } from '../../scripts/test/throwaway-postgres.mjs';

/** Before the first test on the database: take the server that the test command started, or start one for this run. */
export default async function start() {
  if (process.env.TEST_PG_URL) return;
  const server = await startThrowawayPostgres();
  process.env.TEST_PG_URL = server.url;
  return async () => {
    delete process.env.TEST_PG_URL;
    await server.stop();
  };
}
