import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { say } from '../../scripts/start/steps.mjs';
import { turnByTurn } from './closed-loop';
import { fieldsOfForm, multipart } from './form';
import { ask, page } from './http';
import { repeatable, type startRecorder, type Statement, upToCommit } from './queries';
import { serve } from './service';
import { figure, type Section, times } from './table';
import type { Visitor } from './visitors';

type Given = {
  readonly databaseUrl: string;
  readonly recorder: Awaited<ReturnType<typeof startRecorder>>;
  readonly visitors: readonly Visitor[];
  readonly seconds: number;
};

const pool = 10;

/** Booking by the form as it is served, beside the very statements of it from a plain client on the same server. */
export async function measureBooking({ databaseUrl, recorder, visitors, seconds }: Given): Promise<Section> {
  say('booking: noting what a booking sends');
  const writes: (() => Statement[])[] = [];
  for (const visitor of visitors) writes.push(await writesOf(recorder, visitor));
  const service = await serve(databaseUrl);
  const plain = new pg.Pool({ connectionString: databaseUrl, max: pool });
  try {
    const posts = await Promise.all(visitors.map((visitor) => poster(service.address, visitor)));
    const rows: string[][] = [];
    for (const connections of [1, 50]) {
      say(`booking: ${connections} connections`);
      const { ours, theirs } = await turnByTurn(
        {
          ours: (at) => nth(posts, at)(),
          theirs: (at) => inOneTransaction(plain, nth(writes, at)()),
        },
        { connections, seconds, rounds: 3 },
      );
      rows.push(
        [
          [connections, 0],
          [ours.perSecond, 0],
          [ours.p50Ms, 1],
          [ours.p95Ms, 1],
          [theirs.perSecond, 0],
          [theirs.p50Ms, 1],
          [theirs.p95Ms, 1],
        ].map(([value = 0, decimals]) => figure(value, decimals)),
      );
      rows.at(-1)?.push(times(ours.perSecond, theirs.perSecond));
    }
    return {
      title: 'Booking a load, beside its own SQL',
      heads: [
        'connections',
        'a second',
        'p50, ms',
        'p95, ms',
        'SQL a second',
        'SQL p50, ms',
        'SQL p95, ms',
        'a second, times SQL',
      ],
      rows,
      notes: [
        `The form is posted as a browser without script does; the answer is the whole page again. The SQL is the ${writes[0]?.().length} statements that one booking sends up to its commit, ids made afresh, through ${pool} connections of \`pg\`. Each connection books for a holding of its own, all on one open delivery.`,
      ],
    };
  } finally {
    await plain.end();
    await service.stop();
  }
}

async function writesOf(recorder: Given['recorder'], visitor: Visitor): Promise<() => Statement[]> {
  const post = await poster(recorder.address, visitor);
  // The first may make the booking; those after it change it.
  await post();
  const once = upToCommit(await recorder.during(post));
  return repeatable(once, upToCommit(await recorder.during(post)));
}

async function poster(address: string, { slug, deliveryId, cookie }: Visitor): Promise<() => Promise<void>> {
  const url = `${address}/${slug}/deliveries/${deliveryId}`;
  const served = fieldsOfForm((await page(url, cookie)).toString(), 'asked');
  return async () => {
    const fields = served.map(([name, value]) => [name, name === 'writeId' ? randomUUID() : value] as const);
    const { body, headers } = multipart(fields);
    const answer = await ask(url, { cookie, headers: { ...headers, origin: address }, body });
    if (answer.status !== 200 || !answer.body.includes('Booked:'))
      throw new Error(`a booking was answered with ${answer.status}: ${answer.body.toString('utf8', 0, 2000)}`);
  };
}

async function inOneTransaction(plain: pg.Pool, statements: readonly Statement[]): Promise<void> {
  const client = await plain.connect();
  try {
    for (const { text, values } of statements) await client.query({ text, values: [...values], rowMode: 'array' });
  } finally {
    client.release();
  }
}

function nth<One>(all: readonly One[], at: number): One {
  const one = all[at % all.length];
  if (one === undefined) throw new Error('there is nobody to book');
  return one;
}
