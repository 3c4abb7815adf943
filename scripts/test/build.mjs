// The build that the browser tests look at: the one that `npm start` serves.
import { build, secrets } from '../start/build.mjs';

export async function buildForTests() {
  await build(secrets());
  return { passed: 0, failed: 0, report: '' };
}
