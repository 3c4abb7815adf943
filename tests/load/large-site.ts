import { say } from '../../scripts/start/steps.mjs';
import { loadDatabase, type Server } from './bench-database';
import { turnByTurn } from './closed-loop';
import { page } from './http';
import { serve } from './service';
import { figure, type Section, times } from './table';
import { visitorOf, visitorsOf } from './visitors';

const size = { societies: 1, plots: 500, beds: 10, seasons: 15 };

/** A site of 500 plots with 10 beds and 15 seasons each: its rotation and its plan, beside the page people open most. */
export async function measureLargeSite(server: Server, seconds: number): Promise<Section> {
  say('large site: loading it');
  const databaseUrl = await loadDatabase(server, size);
  const visitors = await visitorsOf(databaseUrl, 600);
  const [secretary, member] = [visitorOf(visitors, true, 0), visitorOf(visitors, false, 0)];
  const service = await serve(databaseUrl);
  const at = (path: string) => `${service.address}/${secretary.slug}${path}`;
  try {
    say('large site: its pages');
    // The first answer works out every season of every frame, and keeps it.
    const first = await timed(() => page(at('/office/rotation'), secretary.cookie));
    const works = {
      'This week': () => page(at(''), secretary.cookie),
      'How the rotation holds': () => page(at('/office/rotation'), secretary.cookie),
      'The same, with a what if': () => page(at('/office/rotation?group=allium-kin&more=1'), secretary.cookie),
      'Site plan, a member': () => page(at('/site'), member.cookie),
      'Site plan, the secretary': () => page(at('/site'), secretary.cookie),
    };
    const loads = await turnByTurn(works, { connections: 1, seconds, rounds: 3 });
    const week = loads['This week'].p50Ms;
    const row = (name: string, p50: number, p95: string) => [name, figure(p50, 1), p95, times(p50, week)];
    return {
      title: 'A site of 500 plots, 10 beds each, 15 seasons on record',
      heads: ['page', 'p50, ms', 'p95, ms', 'times this week'],
      rows: [
        ...Object.entries(loads).map(([name, { p50Ms, p95Ms }]) => row(name, p50Ms, figure(p95Ms, 1))),
        row('How the rotation holds, nothing kept yet', first, ''),
      ],
      notes: [
        'One connection. What a frame comes to in a season is kept until its ground or a rule changes; a what if is worked out each time, and nothing of it is kept.',
      ],
    };
  } finally {
    await service.stop();
  }
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}
