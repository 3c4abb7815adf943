import { type ChildProcess, spawn } from 'node:child_process';
import fs from 'node:fs';
import pg from 'pg';
import { say } from '../../scripts/start/steps.mjs';
import { startMailSink } from '../fixtures/mail-sink';
import { loadDatabase, type Server } from './bench-database';
import { figure, type Section, times } from './table';

/** Members in all, and so many to a society. */
export const [wholeLetters, briefLetters] = [10_000, 400] as const;
const plots = 40;
/** So much of the letters is made when a process is killed, and then the next. */
const killedAt = [0.3, 0.6] as const;
const longestMs = 60 * 60_000;

/**
 * The week's letters of so many members: made and sent by two processes, of which one is killed and another begun, twice; beside as many
 * mails written by one statement, and as many handed to the same mail server by hand.
 */
export async function measureLetters(server: Server, members: number): Promise<Section> {
  say(`letters: loading ${figure(members)} members`);
  const databaseUrl = await loadDatabase(server, { societies: members / plots, plots, beds: 2, seasons: 2 });
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  const sink = await startMailSink();
  const running: ChildProcess[] = [];
  try {
    await wishLetters(client);
    const begin = () => running.push(letterWorker(databaseUrl, sink.url));
    say('letters: making and sending');
    const begun = performance.now();
    let [most, killed] = [0, 0];
    begin();
    begin();
    for (;;) {
      const { made, sent } = await counts(client);
      most = Math.max(most, ...running.map(residentMb));
      if (made === members && sent === members) break;
      if (killed < killedAt.length && made >= members * (killedAt[killed] ?? 1)) {
        killed++;
        running.shift()?.kill('SIGKILL');
        begin();
      }
      // What a dead process had in hand is let go of after four hours: here they pass at once.
      await client.query(
        `UPDATE graphile_worker._private_jobs SET locked_at = locked_at - interval '5 hours' WHERE locked_at < now() - interval '30 seconds'`,
      );
      if (performance.now() - begun > longestMs) throw new Error(`it takes too long: ${made} made, ${sent} sent`);
      await new Promise((later) => setTimeout(later, 500));
    }
    const seconds = (performance.now() - begun) / 1000;
    const letters = [...sink.received.values()];
    const twice = letters.filter((one) => one.times > 1).length;
    const to = new Set(letters.map(({ text }) => /^To: (\S+)/im.exec(text)?.[1]));
    if (letters.length !== members || to.size !== members)
      throw new Error(`${letters.length} letters to ${to.size} members, ${members} wanted`);
    const plain = await plainSeconds(client, members);
    return report({ members, seconds, plain, most, killed, twice });
  } finally {
    for (const child of running) child.kill('SIGKILL');
    await client.end();
    await sink.stop();
  }
}

// Everybody wants the letter, and nothing else is queued.
async function wishLetters(client: pg.Client): Promise<void> {
  await client.query(`INSERT INTO "DigestWish" ("societyId", "memberId", "wanted", "tokenHash")
    SELECT "societyId", "id", true, md5("id"::text) FROM "Member" WHERE "email" IS NOT NULL`);
  await client.query('DELETE FROM graphile_worker._private_jobs');
  await client.query('VACUUM ANALYZE');
}

function letterWorker(databaseUrl: string, smtpUrl: string): ChildProcess {
  const [today] = new Date().toISOString().split('T');
  const weekday = (new Date(`${today}T00:00:00Z`).getUTCDay() + 6) % 7;
  const monday = new Date(Date.parse(`${today}T09:00:00Z`) - weekday * 86_400_000).toISOString();
  const env = { ...process.env, NODE_OPTIONS: '', DATABASE_URL: databaseUrl, SMTP_URL: smtpUrl, TZ: 'UTC' };
  Object.assign(env, {
    NEXTAUTH_URL: 'http://127.0.0.1:3000',
    NEXTAUTH_SECRET: 'only the measurements know this secret',
  });
  Object.assign(env, { BARROWMOOT_TEST: '1', BARROWMOOT_FIXED_NOW: monday });
  const args = ['--conditions=react-server', '--import', 'tsx', 'tests/fixtures/letter-worker.ts'];
  return spawn(process.execPath, args, { env, stdio: ['ignore', 'ignore', 'inherit'] });
}

async function counts(client: pg.Client): Promise<{ made: number; sent: number }> {
  const { rows } = await client.query<{ made: number; sent: number }>(`
    SELECT (SELECT count(*)::int FROM "DigestSent") AS made,
      (SELECT count(*)::int FROM "MailMessage" m JOIN "DigestSent" d ON d."mailId" = m."id" WHERE m."sentAt" IS NOT NULL) AS sent`);
  return rows[0] ?? { made: 0, sent: 0 };
}

function residentMb({ pid }: ChildProcess): number {
  try {
    return Number(/VmRSS:\s+(\d+) kB/.exec(fs.readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}

// The same rows by one statement, each mail with its job: what the database alone asks for.
async function plainSeconds(client: pg.Client, members: number): Promise<number> {
  const begun = performance.now();
  await client.query(
    `WITH mails AS (INSERT INTO "MailMessage" ("id", "toAddress", "subject", "body")
       SELECT gen_random_uuid(), "id"::text, 'x', repeat('x', 800) FROM "Member" WHERE "email" IS NOT NULL LIMIT $1 RETURNING "id")
     SELECT graphile_worker.add_job('nothing-takes-this', json_build_object('id', "id")) FROM mails`,
    [members],
  );
  return (performance.now() - begun) / 1000;
}

type Found = { members: number; seconds: number; plain: number; most: number; killed: number; twice: number };

function report({ members, seconds, plain, most, killed, twice }: Found): Section {
  return {
    title: 'Weekly letters: two processes, one killed and another begun twice in the middle',
    heads: [
      'letters',
      's',
      'a second',
      'the rows alone, s',
      'times the rows alone',
      'most memory of a process, MB',
      'sent twice',
    ],
    rows: [
      [
        ...[figure(members), figure(seconds, 1), figure(members / seconds), figure(plain, 2), times(seconds, plain)],
        ...[figure(most), figure(twice)],
      ],
    ],
    notes: [
      `${figure(members / plots)} societies of ${plots} members, each with a plot of 2 beds. Every letter is worked out from the member's own records as “This week” is, made once, and handed to a mail server on the same machine, which keeps what it gets by the mail's identity: ${figure(members)} letters, as many addressees, none missing. ${killed} processes were killed in the middle; what was in their hands when they died may be handed over a second time under the same identity (the last column).`,
    ],
  };
}
