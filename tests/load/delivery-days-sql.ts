import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { say } from '../../scripts/start/steps.mjs';
import { type Load, turnByTurn } from './closed-loop';
import type { Season } from './delivery-days-season';
import { fieldsOfForm, multipart } from './form';
import { ask, page } from './http';
import { inOrder, repeatable, startRecorder, type Statement, upToCommit } from './queries';

type Given = {
  readonly databaseUrl: string;
  readonly folder: string;
  readonly season: Season;
  readonly connections: number;
  readonly seconds: number;
};

/** What a holding is given of the delivery that is ticked off here: more than can be ticked in the time. */
const plenty = 400;

/** The statements of a booking and of a tick, by themselves: each connection for a member of its own. */
export async function measureStatements(given: Given): Promise<{ readonly booking: Load; readonly tick: Load }> {
  const { databaseUrl, folder, season, connections, seconds } = given;
  say('delivery days: the same statements by themselves');
  const recorder = await startRecorder(databaseUrl, folder);
  const plain = new pg.Pool({ connectionString: databaseUrl, max: connections });
  try {
    const openId = await season.open(-2);
    const bookings = await writesFor(recorder, given, `/${season.slug}/deliveries/${openId}`, { asked: '3' });
    const sharedId = await season.openAndShare(plenty, connections);
    const ticks = await writesFor(recorder, given, `/${season.slug}/deliveries/${sharedId}/collect`, { loads: '1' });
    const { booking, tick } = await turnByTurn(
      { booking: (at) => inOrder(plain, nth(bookings, at)()), tick: (at) => inOrder(plain, nth(ticks, at)()) },
      { connections, seconds, rounds: 3 },
    );
    return { booking, tick };
  } finally {
    await plain.end();
    await recorder.stop();
  }
}

async function writesFor(
  recorder: Awaited<ReturnType<typeof startRecorder>>,
  { season, connections }: Given,
  path: string,
  fields: Readonly<Record<string, string>>,
): Promise<(() => Statement[])[]> {
  const writes: (() => Statement[])[] = [];
  const url = `${recorder.address}${path}`;
  for (const { cookie } of season.members.slice(0, connections)) {
    const served = fieldsOfForm((await page(url, cookie)).toString(), Object.keys(fields)[0] ?? '');
    const post = async () => {
      const values = Object.entries({ ...Object.fromEntries(served), ...fields, writeId: randomUUID() });
      const { body, headers } = multipart(values);
      const answer = await ask(url, { cookie, headers: { ...headers, origin: recorder.address }, body });
      const text = answer.body.toString();
      if (answer.status !== 200 || text.includes('role="alert"')) throw new Error(`${path}: ${text.slice(0, 2000)}`);
    };
    // The first may begin something: the booking, or the collecting.
    await post();
    const once = upToCommit(await recorder.during(post));
    writes.push(repeatable(once, upToCommit(await recorder.during(post))));
  }
  return writes;
}

function nth<One>(all: readonly One[], at: number): One {
  const one = all[at % all.length];
  if (one === undefined) throw new Error('there is nobody to book');
  return one;
}
