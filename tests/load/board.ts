import pg from 'pg';
import { say } from '../../scripts/start/steps.mjs';
import { chanceFrom } from '../fixtures/chance';
import { loadDatabase, type Server } from './bench-database';
import { turnByTurn } from './closed-loop';
import { page } from './http';
import { inOrder, startRecorder } from './queries';
import { figure, type Section, times } from './table';
import { visitorsOf } from './visitors';

/** Posts in all, and threads that they stand in. */
export const [wholeBoard, briefBoard] = [20_000, 1000] as const;
const postsEach = 25;

const words =
  'onion leek garlic potato bed trench spade manure straw frost seed drill row hoe slug pigeon netting beans peas squash chilli apple barrow heap rot mould dry wet clay loam sand early late sown planted lifted stored small large sound bad good neighbour fence water butt path gate'.split(
    ' ',
  );

/** The board with so many posts: its pages beside the statements that they ask, by themselves. */
export async function measureBoard(server: Server, folder: string, posts: number, seconds: number): Promise<Section> {
  say(`board: loading ${figure(posts)} posts`);
  const databaseUrl = await loadDatabase(server, { societies: 1, plots: 60, beds: 4, seasons: 2 });
  const plain = new pg.Pool({ connectionString: databaseUrl, max: 4 });
  const threadId = await writeBoard(plain, posts);
  const [visitor] = await visitorsOf(databaseUrl, 1);
  if (!visitor) throw new Error('nobody lives in the database');
  const recorder = await startRecorder(databaseUrl, folder);
  try {
    const rows: string[][] = [];
    const paths = {
      'the board': '/board',
      [`a thread of ${postsEach} posts`]: `/board/${threadId}`,
      'search: one common word': '/board/search?words=onion',
      'search: two words and not a third': '/board/search?words=garlic+frost+-slug',
      'search: a word of one title': '/board/search?words=quincunx',
    };
    for (const [name, path] of Object.entries(paths)) {
      say(`board: ${name}`);
      const open = () => page(`${recorder.address}/${visitor.slug}${path}`, visitor.cookie);
      await open();
      const asked = await recorder.during(open);
      const works = { page: open, statements: () => inOrder(plain, asked) };
      const loads = await turnByTurn(works, { connections: 1, seconds, rounds: 3 });
      rows.push([
        ...[name, figure(asked.length), figure(loads.page.p50Ms, 1), figure(loads.page.p95Ms, 1)],
        ...[figure(loads.statements.p50Ms, 1), figure(loads.statements.p95Ms, 1)],
        times(loads.page.p95Ms, loads.statements.p95Ms),
      ]);
    }
    return {
      title: `The board at ${figure(posts)} posts`,
      heads: [
        'page',
        'statements',
        'p50, ms',
        'p95, ms',
        'the same by pg, p50, ms',
        'p95, ms',
        'p95, times the statements',
      ],
      rows,
      notes: [
        `${figure(posts / postsEach)} threads, words drawn from a list of ${words.length} with a fixed seed. One connection; the statements are those that the page sent, signing in included, one after the other through \`pg\`.`,
      ],
    };
  } finally {
    await recorder.stop();
    await plain.end();
  }
}

/** Write the posts of one society; answers a thread in the middle. */
async function writeBoard(plain: pg.Pool, posts: number): Promise<string> {
  const { whole } = chanceFrom(7);
  const sentence = (least: number, most: number) =>
    Array.from({ length: whole(least, most) }, () => words[whole(0, words.length - 1)]).join(' ');
  const titles = Array.from({ length: posts / postsEach }, (_, at) => (at === 3 ? 'Quincunx' : sentence(3, 6)));
  const bodies = Array.from({ length: posts }, () => sentence(10, 80));
  await plain.query(
    `INSERT INTO "Thread" ("id", "societyId", "kind", "title", "byMemberId", "createdAt", "lastPostAt")
     SELECT gen_random_uuid(), m."societyId", 'talk', t.title, m."id", now() - interval '1 hour' * t.nth, now() - interval '1 minute' * t.nth
     FROM unnest($1::text[]) WITH ORDINALITY t(title, nth),
       LATERAL (SELECT "id", "societyId" FROM "Member" ORDER BY md5("id"::text || t.nth) LIMIT 1) m`,
    [titles],
  );
  await plain.query(
    `WITH threads AS (SELECT "id", "societyId", row_number() OVER (ORDER BY "lastPostAt") - 1 AS nth FROM "Thread"),
       members AS (SELECT "id", row_number() OVER (ORDER BY "id") - 1 AS nth, count(*) OVER () AS all FROM "Member")
     INSERT INTO "Post" ("id", "societyId", "threadId", "byMemberId", "body", "writtenAt")
     SELECT gen_random_uuid(), t."societyId", t."id", m."id", b.body, now() - interval '1 second' * b.nth
     FROM unnest($1::text[]) WITH ORDINALITY b(body, nth) JOIN threads t ON t.nth = (b.nth - 1) / $2
       JOIN members m ON m.nth = b.nth % m.all`,
    [bodies, postsEach],
  );
  await plain.query('VACUUM ANALYZE');
  const { rows } = await plain.query<{ id: string }>(
    'SELECT "id" FROM "Thread" ORDER BY "lastPostAt" OFFSET 20 LIMIT 1',
  );
  return rows[0]?.id ?? '';
}
