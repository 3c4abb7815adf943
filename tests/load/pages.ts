import fs from 'node:fs';
import path from 'node:path';
import { freePort } from '../../scripts/start/ports.mjs';
import { say } from '../../scripts/start/steps.mjs';
import { turnByTurn } from './closed-loop';
import { page } from './http';
import type { startRecorder, Statement } from './queries';
import { run, type Service, serve } from './service';
import { figure, type Section, times } from './table';
import { mainPages, type Visitor, visitorOf } from './visitors';

type Given = {
  readonly databaseUrl: string;
  readonly recorder: Awaited<ReturnType<typeof startRecorder>>;
  readonly visitors: readonly Visitor[];
  readonly seconds: number;
  readonly folder: string;
};

const connections = 50;

/** A service that reads each page's data once and then serves it without the database. */
export function serveHeld(databaseUrl: string): Promise<Service> {
  return serve(databaseUrl, { BARROWMOOT_TEST: '1', BARROWMOOT_BENCH: '1' });
}

/** The main pages, beside the same markup without the database, and beside the least that sends the same bytes. */
export async function measurePages({ databaseUrl, recorder, visitors, seconds, folder }: Given): Promise<Section> {
  say('pages: noting what each page asks');
  const recorded = await recordPages(recorder, visitors);
  const service = await serve(databaseUrl);
  const held = await serveHeld(databaseUrl);
  const bare = await serveBare(databaseUrl, recorded, folder);
  try {
    const rows: string[][] = [];
    for (const { name, pathFor, forSecretary } of mainPages) {
      say(`pages: ${name}`);
      const who = (at: number) => visitorOf(visitors, forSecretary, at);
      const from = (address: string) => (at: number) => page(`${address}${pathFor(who(at))}`, who(at).cookie);
      await checkSame(from(service.address), from(held.address), name);
      // Bare bytes are the first visitor's, whoever asks.
      const theirs = () => page(`${bare.address}${pathFor(who(0))}`);
      const works = { ours: from(service.address), held: from(held.address), bare: theirs };
      const load = await turnByTurn(works, { connections, seconds, rounds: 3 });
      const { queries, html } = recorded[pathFor(who(0))] ?? { queries: [], html: '' };
      rows.push([
        name,
        figure(queries.length),
        figure(html.length / 1000),
        ...[load.ours, load.held, load.bare].flatMap(({ perSecond, p50Ms, p95Ms }) => [
          figure(perSecond),
          `${figure(p50Ms)} / ${figure(p95Ms)}`,
        ]),
        times(load.ours.perSecond, load.held.perSecond),
        times(load.ours.perSecond, load.bare.perSecond),
      ]);
    }
    return {
      title: `Pages at ${connections} connections`,
      heads: [
        'page',
        'statements',
        'kB',
        'a second',
        'p50 / p95, ms',
        'without database, a second',
        'p50 / p95, ms',
        'bare Node, a second',
        'p50 / p95, ms',
        'times without database',
        'times bare Node',
      ],
      rows,
      notes: [
        'Without database: another process of the same build that keeps the first answer of each read (`BARROWMOOT_BENCH`, refused in normal service), so that the same page is rendered from captured data; the bench checks that the markup is the same. Bare Node: `node:http` sends the page’s statements one after the other through `pg` and answers with the same bytes. The aim is 0.5 × without database or better. Nothing is compressed.',
      ],
    };
  } finally {
    await Promise.all([service, held, bare].map(({ stop }) => stop()));
  }
}

type Recorded = Record<string, { readonly queries: readonly Statement[]; readonly html: string }>;

async function recordPages(recorder: Given['recorder'], visitors: readonly Visitor[]): Promise<Recorded> {
  const recorded: Recorded = {};
  for (const { pathFor, forSecretary } of mainPages) {
    const visitor = visitorOf(visitors, forSecretary, 0);
    const open = () => page(`${recorder.address}${pathFor(visitor)}`, visitor.cookie);
    const html = (await open()).toString();
    const queries = await recorder.during(open);
    recorded[pathFor(visitor)] = { queries, html };
  }
  return recorded;
}

async function serveBare(databaseUrl: string, pages: Recorded, folder: string): Promise<Service> {
  const port = await freePort();
  const file = path.join(folder, 'bare.json');
  fs.writeFileSync(file, JSON.stringify({ port, databaseUrl, pages }));
  return run('tests/load/bare-server.mjs', [file], {}, `http://127.0.0.1:${port}/`);
}

// A floor that shows something else is none.
async function checkSame(ours: (at: number) => Promise<Buffer>, held: (at: number) => Promise<Buffer>, name: string) {
  for (let at = 0; at < connections; at++) {
    const [one, other] = await Promise.all([ours(at), held(at)]);
    if (markup(one) !== markup(other)) throw new Error(`${name} without the database is not the same page`);
  }
}

/** The page without what is made anew each time: scripts with their nonces, and the hidden ids of writes and actions. */
function markup(body: Buffer): string {
  return body
    .toString()
    .replaceAll(/<script[\s\S]*?<\/script>|<link [^>]*>/g, '')
    .replaceAll(/<input type="hidden"[^>]*>/g, '');
}
