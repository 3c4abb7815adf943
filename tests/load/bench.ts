import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { say } from '../../scripts/start/steps.mjs';
import { killRunning } from '../../scripts/test/child.mjs';
import { startThrowawayPostgres } from '../../scripts/test/throwaway-postgres.mjs';
import { loadDatabase } from './bench-database';
import { briefBoard, measureBoard, wholeBoard } from './board';
import { measureBooking } from './booking';
import { measureCompliance, measureHistory } from './compliance';
import { measureFairness } from './fairness';
import { brief, measureDeliveryDays, whole } from './delivery-days';
import { hangUp } from './http';
import { measureLargeSite } from './large-site';
import { briefLetters, measureLetters, wholeLetters } from './letters';
import { measureMemory } from './memory';
import { measurePages } from './pages';
import { startRecorder } from './queries';
import { measurePlacing } from './placing';
import { measurePlanner, measurePlannerBeside } from './planner';
import { measureScripts } from './scripts-sent';
import { measureShareOut } from './share-out';
import { measureSheetPage } from './sheet-page';
import { measureSocieties } from './societies';
import { measureStartUp } from './start-up';
import { type Section, section } from './table';
import { measureTrench } from './trench';
import { visitorsOf } from './visitors';

// All of it writes the report; some of it by name, or all of it --quick, is only shown. But fairness, which comes out the same
// on every machine, is written by name too.
const names = process.argv.slice(2).filter((one) => one !== '--quick');
const isQuick = process.argv.includes('--quick');
const [seconds, requests] = isQuick ? [0.5, 1000] : [3, 10_000];

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'barrowmoot-bench-'));
// As root PostgreSQL runs as somebody else, who must be able to walk down to its folder.
fs.chmodSync(folder, 0o711);
say('PostgreSQL for the measurements');
const server = await startThrowawayPostgres();

async function tidy(): Promise<void> {
  hangUp();
  await killRunning();
  await server.stop();
  fs.rmSync(folder, { recursive: true, force: true });
}
for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.once(signal, () => void tidy().finally(() => process.exit(130)));

async function measure(): Promise<string> {
  say('loading 10 societies');
  const databaseUrl = await loadDatabase(server, { societies: 10, plots: 60 });
  const visitors = await visitorsOf(databaseUrl, 600);
  // One society, so that all of them book on one delivery.
  const mates = visitors.filter(({ slug }) => slug === visitors[0]?.slug).slice(0, 50);
  const recorded = async <Found>(work: (recorder: Awaited<ReturnType<typeof startRecorder>>) => Promise<Found>) => {
    const recorder = await startRecorder(databaseUrl, folder);
    return work(recorder).finally(recorder.stop);
  };
  const parts: Record<string, () => Section | Promise<Section>> = {
    'share-out': measureShareOut,
    fairness: () => measureFairness(isQuick ? 2 : 20, !isQuick),
    placing: measurePlacing,
    compliance: measureCompliance,
    history: measureHistory,
    trench: measureTrench,
    planner: () => measurePlanner(isQuick ? 5 : 50),
    beside: () => measurePlannerBeside(databaseUrl, mates, seconds),
    booking: () => recorded((recorder) => measureBooking({ databaseUrl, recorder, visitors: mates, seconds })),
    pages: () => recorded((recorder) => measurePages({ databaseUrl, recorder, visitors: mates, seconds, folder })),
    sheet: () => measureSheetPage(databaseUrl, mates, seconds),
    societies: () => measureSocieties(server, seconds / 2),
    'large-site': () => measureLargeSite(server, seconds / 2),
    memory: () => measureMemory(databaseUrl, mates, requests),
    'start-up': () => measureStartUp(databaseUrl, folder),
    'delivery-days': () => measureDeliveryDays(folder, isQuick ? brief : whole, seconds),
    board: () => measureBoard(server, folder, isQuick ? briefBoard : wholeBoard, seconds),
    letters: () => measureLetters(server, isQuick ? briefLetters : wholeLetters),
    scripts: () => measureScripts(databaseUrl, mates),
  };
  const unknown = names.filter((name) => !(name in parts));
  if (unknown.length)
    throw new Error(`There is no ${unknown.join(', ')}. There are: ${Object.keys(parts).join(', ')}.`);
  const sections: string[] = [];
  for (const [name, work] of Object.entries(parts))
    if (names.length === 0 || names.includes(name)) sections.push(section(await work()));
  return sections.join('\n');
}

try {
  const day = new Date().toISOString().slice(0, 10);
  const report = `# Measurements

Written by \`npm run bench\` on ${day}, Node ${process.versions.node}, ${os.cpus().length} cores. What is compared was run turn by turn in the same run: read the ratios, not the milliseconds. In the tables beside a plain sort the middle of seven runs.

${await measure()}`;
  if (names.length === 0 && !isQuick) fs.writeFileSync('docs/measurements.md', report);
  console.log(`\n${report}`);
} finally {
  await tidy();
}
