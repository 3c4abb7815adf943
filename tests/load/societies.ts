import { say } from '../../scripts/start/steps.mjs';
import { loadDatabase, type Server } from './bench-database';
import { turnByTurn } from './closed-loop';
import { page } from './http';
import { type Service, serve } from './service';
import { figure, type Section, times } from './table';
import { mainPages, visitorOf, visitorsOf } from './visitors';

const counts = [1, 10, 100] as const;
const plots = 40;

/** The same pages with ever more societies beside one's own: the aim is no growth. */
export async function measureSocieties(server: Server, seconds: number): Promise<Section> {
  const places: { service: Service; visitors: Awaited<ReturnType<typeof visitorsOf>> }[] = [];
  try {
    for (const societies of counts) {
      say(`societies: loading ${societies}`);
      const databaseUrl = await loadDatabase(server, { societies, plots });
      places.push({ service: await serve(databaseUrl), visitors: await visitorsOf(databaseUrl, 200) });
    }
    const rows: string[][] = [];
    for (const { name, pathFor, forSecretary } of mainPages) {
      say(`societies: ${name}`);
      const works = Object.fromEntries(
        places.map(({ service, visitors }, at) => {
          let visits = 0;
          const open = () => {
            // Another visitor each time, of another society where there is one.
            const visitor = visitorOf(visitors, forSecretary, visits++);
            return page(`${service.address}${pathFor(visitor)}`, visitor.cookie);
          };
          return [String(counts[at]), open];
        }),
      );
      const loads = Object.values(await turnByTurn(works, { connections: 1, seconds, rounds: 3 }));
      const p50 = loads.map(({ p50Ms }) => p50Ms);
      rows.push([
        name,
        ...loads.map(({ p50Ms, p95Ms }) => `${figure(p50Ms, 1)} / ${figure(p95Ms, 1)}`),
        ...p50.slice(1).map((ms) => times(ms, p50[0] ?? 0)),
      ]);
    }
    return {
      title: 'Pages with more societies in the database',
      heads: [
        'page',
        ...counts.map((count) => `${count} ${count === 1 ? 'society' : 'societies'}, p50 / p95, ms`),
        ...counts.slice(1).map((count) => `${count} times 1`),
      ],
      rows,
      notes: [
        `Societies of ${plots} plots of 8 beds with 6 seasons on record, 7 deliveries and a book of every planting. One connection, each visit by another member, spread evenly over the societies. The aim is no growth.`,
      ],
    };
  } finally {
    for (const { service } of places) await service.stop();
  }
}
