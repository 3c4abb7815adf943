import fs from 'node:fs';
import os from 'node:os';
import { footprint } from '@/lib/domain/ground/footprint';
import { complianceOfSeason } from '@/lib/domain/rotation/compliance';
import type { RecordedPlanting } from '@/lib/domain/rotation/recorded-planting';
import { shareOut } from '@/lib/domain/sharing/share-out';

type Measured = { readonly size: number; readonly ms: number; readonly besideMs: number; readonly heapMb: number };

/** The middle of seven runs of each, turn by turn, so that both see the same machine. */
function sideBySide(size: number, work: () => unknown, beside: () => unknown): Measured {
  const [ours, theirs]: [number[], number[]] = [[], []];
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  let most = before;
  for (let turn = 0; turn < 7; turn++) {
    ours.push(timed(work));
    most = Math.max(most, process.memoryUsage().heapUsed);
    theirs.push(timed(beside));
  }
  return { size, ms: middle(ours), besideMs: middle(theirs), heapMb: (most - before) / 1e6 };
}

function timed(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

function measureShareOut(count: number): Measured {
  const claims = Array.from({ length: count }, (_, at) => ({
    id: `claim-${at}`,
    asked: (at * 7) % 13,
    need: (at * 5) % 9,
    creditMillionths: ((at * 37) % 101) * 1000,
  }));
  const numbers = claims.map(({ creditMillionths }, at) => (creditMillionths * 7919 + at * 104_729) % 1_000_003);
  const loads = count * 3;
  return sideBySide(
    count,
    () => shareOut({ loads, claims, lotSeed: 'ab'.repeat(32) }),
    () => numbers.toSorted((a, b) => a - b),
  );
}

function measureCompliance(plots: number): Measured {
  const groups = ['allium-kin', 'brassica-kin', 'legume-kin', 'potato-kin'];
  const beds = Array.from({ length: plots * 8 }, (_, at) => ({
    id: `b${at}`,
    frameId: `f${Math.floor(at / 8)}`,
    footprint: footprint(0, (at % 8) * 200, 600, 150),
  }));
  const plantings = new Map<string, RecordedPlanting[]>();
  for (const [at, bed] of beds.entries())
    for (let season = 2015; season < 2027; season++) {
      const row: RecordedPlanting = {
        id: `${bed.id} ${season}`,
        footprint: bed.footprint,
        cropKey: 'x',
        hostGroups: [groups[(at + season) % 4] ?? ''],
        cropGroup: 'alliums',
        firstSeason: season,
        lastSeason: season,
      };
      plantings.set(bed.frameId, [...(plantings.get(bed.frameId) ?? []), row]);
    }
  const settings = {
    breakYears: Object.fromEntries(groups.map((group) => [group, 3])),
    edgeWidthCm: 30,
    edgeSharePercent: 5,
  };
  const rows = [...plantings.values()].flat();
  return sideBySide(
    plots,
    () => complianceOfSeason({ season: 2026, beds, undividedAreaCm2: 0, plantings, settings }),
    () => rows.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  );
}

function table(title: string, beside: string, unit: string, rows: readonly Measured[]): string {
  const lines = rows.map(({ size, ms, besideMs, heapMb }, at) => {
    const before = rows[at - 1];
    const growth = before ? `${(ms / before.ms).toFixed(1)} for ${(size / before.size).toFixed(0)} times the size` : '';
    return `| ${size.toLocaleString('en-GB')} | ${ms.toFixed(1)} | ${(ms / besideMs).toFixed(1)} | ${growth} | ${heapMb.toFixed(0)} |`;
  });
  return [
    `## ${title}`,
    '',
    `| ${unit} | ms | times ${beside} | growth | heap, MB |`,
    '|---|---|---|---|---|',
    ...lines,
    '',
  ].join('\n');
}

const report = [
  '# Measurements',
  '',
  `Written by \`npm run bench\` on ${new Date().toISOString().slice(0, 10)}, Node ${process.versions.node}, ${os.cpus().length} cores. Middle of seven runs; the ratio is against the other column of the same run.`,
  '',
  table('Share-out', 'a plain sort of as many numbers', 'claims', [100, 1000, 10_000, 100_000].map(measureShareOut)),
  table(
    'Compliance of a season: plots of 8 beds with 12 seasons on record',
    'a plain sort of as many plantings',
    'plots',
    [25, 50, 100, 200].map(measureCompliance),
  ),
].join('\n');

fs.writeFileSync('docs/measurements.md', report);
console.log(report);
