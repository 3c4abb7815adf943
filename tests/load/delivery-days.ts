import { randomUUID } from 'node:crypto';
import { startMortalPostgres } from '../fixtures/mortal-postgres';
import { say } from '../../scripts/start/steps.mjs';
import { type Acknowledged, checkDays, type Size } from './delivery-days-sound';
import { makeSeason, type Season } from './delivery-days-season';
import { measureStatements } from './delivery-days-sql';
import { makeFleet, type Fleet } from './fleet';
import { fieldsOfForm, multipart } from './form';
import { hangUp } from './http';
import { figure, type Section, times } from './table';

/** 5,000 bookings and 20,000 collections; shortly a fiftieth of that. */
export const [whole, brief]: readonly [Size, Size] = [
  { members: 500, deliveries: 10, loadsEach: 4 },
  { members: 100, deliveries: 2, loadsEach: 4 },
];

const processes = 4;
const connections = 40;
/** Of so many members one tries a load more than their share, and one sends a write twice. */
const everySoMany = 10;
/** The longest that all of it may take [ms]. */
const longestMs = 60 * 60_000;

type Phase = { readonly sent: Acknowledged[]; seconds: number };

/**
 * A season through the forms, by four processes on one PostgreSQL that syncs to disk. In the middle of booking one process is
 * killed, in the middle of collecting the database; what was not acknowledged is sent again under the same number.
 */
export async function measureDeliveryDays(folder: string, size: Size, seconds: number): Promise<Section> {
  const server = await startMortalPostgres();
  const fleet = await makeFleet(server.url, processes);
  const until = performance.now() + longestMs;
  try {
    say(`delivery days: ${size.members} members`);
    const season = await makeSeason(server.url, size.members);
    const [booked, ticked]: [Phase, Phase] = [newPhase(), newPhase()];
    const middle = Math.ceil(size.deliveries / 2) - 1;
    for (let nth = 0; nth < size.deliveries; nth++) {
      if (performance.now() > until) throw new Error('it takes too long');
      say(`delivery days: delivery ${nth + 1} of ${size.deliveries}`);
      const deliveryId = await season.open(nth);
      const bookings = season.members.map((member) => ({ member, ...bookingForm(season, deliveryId, size.loadsEach) }));
      await phase(fleet, booked, bookings, nth === middle ? () => fleet.killOne() : null);
      await fleet.whole();
      // A load fewer than is asked for each: nobody's claim is met in full.
      await season.share(deliveryId, size.members * size.loadsEach);
      const shares = await season.sharesOf(deliveryId);
      const ticks = season.members.map((member) => ({
        member,
        ...tickForm(season, deliveryId, shares.get(member.holdingId) ?? 0),
      }));
      const killDatabase = async () => {
        await server.kill();
        await server.startAgain();
      };
      await phase(fleet, ticked, ticks, nth === middle ? killDatabase : null);
      await season.settle(deliveryId);
    }
    await checkDays(server.url, season, size, { booked: booked.sent, ticked: ticked.sent });
    say(`delivery days: all is sound; ${[booked, ticked].map(spoken).join(', then ')}`);
    const plain = await measureStatements({ databaseUrl: server.url, folder, season, connections, seconds });
    return report(size, { booked, ticked }, plain);
  } finally {
    hangUp();
    await fleet.stop();
    await server.stop();
  }
}

// Said at once, so that whatever fails afterwards does not lose it.
function spoken({ sent, seconds }: Phase): string {
  return `${sent.length} acknowledged in ${seconds.toFixed(0)} s`;
}

function newPhase(): Phase {
  return { sent: [], seconds: 0 };
}

type Task = {
  readonly member: Season['members'][number];
  readonly url: string;
  readonly having: string;
  readonly fields: Readonly<Record<string, string>>;
  readonly times: number;
};

function bookingForm({ slug }: Season, deliveryId: string, loadsEach: number) {
  const url = `/${slug}/deliveries/${deliveryId}`;
  return { url, having: 'asked', fields: { asked: String(loadsEach + 1) }, times: 1 };
}

function tickForm({ slug }: Season, deliveryId: string, share: number) {
  return { url: `/${slug}/deliveries/${deliveryId}/collect`, having: 'loads', fields: { loads: '1' }, times: share };
}

/** All members at it, so many at a time; in the middle of it something is killed. */
async function phase(fleet: Fleet, into: Phase, tasks: readonly Task[], kill: (() => unknown) | null): Promise<void> {
  const left = tasks.filter(({ times: wanted }) => wanted > 0);
  const all = left.reduce((sum, task) => sum + task.times, 0);
  const [begun, before] = [performance.now(), into.sent.length];
  let killing: Promise<unknown> | null = null;
  const loop = async () => {
    for (let task = left.pop(); task; task = left.pop()) {
      await send(fleet, task, (one) => into.sent.push(one), left.length % everySoMany === 0);
      if (kill && !killing && into.sent.length - before >= all / 2) killing = Promise.resolve(kill());
    }
  };
  await Promise.all(Array.from({ length: connections }, loop));
  if (kill && !killing) throw new Error('nothing was killed: the middle never came');
  await killing;
  into.seconds += (performance.now() - begun) / 1000;
}

/** One member: open the page, send its form as often as wanted; some send one twice, and then one that is too many. */
async function send(fleet: Fleet, task: Task, sent: (one: Acknowledged) => void, isDoubtful: boolean): Promise<void> {
  const { member, url, having, fields } = task;
  const served = fieldsOfForm(await fleet.open(url, member.cookie), having);
  const post = (writeId: string, wanted: 'done' | 'either') => {
    const values = Object.entries({ ...Object.fromEntries(served), ...fields, writeId });
    return fleet.post(url, member.cookie, multipart(values), wanted);
  };
  for (let nth = 0; nth < task.times; nth++) {
    const writeId = randomUUID();
    const ms = await post(writeId, 'done');
    sent({ writeId, ms });
    if (isDoubtful && nth === 0) await post(writeId, 'done');
  }
  // Its form is gone from the page by then: whether it was taken is seen in the books.
  if (isDoubtful && having === 'loads') await post(randomUUID(), 'either');
}

type Plain = Awaited<ReturnType<typeof measureStatements>>;

function report(size: Size, { booked, ticked }: { booked: Phase; ticked: Phase }, plain: Plain): Section {
  const row = (what: string, { sent, seconds }: Phase, sql: Plain['booking']) => {
    const ms = sent.map((one) => one.ms).sort((a, b) => a - b);
    const part = (share: number) => ms[Math.min(ms.length - 1, Math.floor(ms.length * share))] ?? 0;
    return [
      ...[what, figure(sent.length), figure(sent.length / seconds, 1), figure(part(0.5)), figure(part(0.95))],
      ...[figure(sql.perSecond), figure(sql.p50Ms, 1), figure(sql.p95Ms, 1)],
      ...[times(sent.length / seconds, sql.perSecond), times(part(0.95), sql.p95Ms)],
    ];
  };
  return {
    title: 'Delivery days: four processes, one PostgreSQL, a process and the database killed in the middle',
    heads: [
      ...['what', 'acknowledged', 'a second', 'p50, ms', 'p95, ms', 'SQL a second', 'SQL p50, ms', 'SQL p95, ms'],
      ...['a second, times SQL', 'p95, times SQL'],
    ],
    rows: [row('bookings', booked, plain.booking), row('loads ticked off', ticked, plain.tick)],
    notes: [
      `${size.members} members, ${size.deliveries} deliveries, ${connections} connections to ${processes} processes; PostgreSQL syncs to disk. Each member opens the page (not in the times, but in the seconds) and posts its form as a browser without script does; a time is from the first sending to the answer, through whatever was killed meanwhile. In the middle of booking one process was killed, in the middle of collecting the database, and started again after that; what was not acknowledged was sent again under its number. One in ten sent a write twice and tried a load beyond their share.`,
      'Afterwards, by SQL: shares and collections at or under each heap and share; as many collections as were acknowledged, each once and each with its line in the book; every credit and every entry of the ledger sums to nothing. The SQL is what one booking and one tick send up to their commit, ids made afresh, on the same database and as many connections of `pg` as the processes have together.',
    ],
  };
}
