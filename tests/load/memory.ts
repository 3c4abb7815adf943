import { say } from '../../scripts/start/steps.mjs';
import { page } from './http';
import { serveHeld } from './pages';
import { residentMb, type Service, serve } from './service';
import { figure, type Section, times } from './table';
import { mainPages, type Visitor, visitorOf } from './visitors';

/** What a server process holds in memory at its start and after so many requests, beside the same pages without the database. */
export async function measureMemory(
  databaseUrl: string,
  visitors: readonly Visitor[],
  requests: number,
): Promise<Section> {
  say(`memory: ${figure(requests)} requests`);
  const ours = await serve(databaseUrl);
  const held = await serveHeld(databaseUrl);
  try {
    const one = await growth(ours, visitors, requests);
    const other = await growth(held, visitors, requests);
    return {
      title: 'Memory of a server process',
      heads: ['', 'at start, MB', `after ${figure(requests)} requests, MB`, 'growth'],
      rows: [
        ['the service', figure(one.before), figure(one.after), times(one.after, one.before)],
        [
          'the same pages without the database',
          figure(other.before),
          figure(other.after),
          times(other.after, other.before),
        ],
        ['one times the other', times(one.before, other.before), times(one.after, other.after), ''],
      ],
      notes: ['Resident memory of the process: the main pages in turn, 50 connections.'],
    };
  } finally {
    await ours.stop();
    await held.stop();
  }
}

async function growth({ address, pid }: Service, visitors: readonly Visitor[], requests: number) {
  const before = residentMb(pid);
  let sent = 0;
  const loop = async () => {
    while (sent < requests) {
      const nth = sent++;
      const { pathFor, forSecretary } = mainPages[nth % mainPages.length] ?? { pathFor: () => '/' };
      const visitor = visitorOf(visitors, forSecretary, Math.floor(nth / mainPages.length));
      await page(`${address}${pathFor(visitor)}`, visitor.cookie);
    }
  };
  await Promise.all(Array.from({ length: 50 }, loop));
  return { before, after: residentMb(pid) };
}
