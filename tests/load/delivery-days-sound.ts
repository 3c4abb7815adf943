import pg from 'pg';
import type { Season } from './delivery-days-season';

/** What was sent, and acknowledged: its number, and how long that took from the first sending on [ms]. */
export type Acknowledged = { readonly writeId: string; readonly ms: number };

/** How much is done. */
export type Size = { readonly members: number; readonly deliveries: number; readonly loadsEach: number };
type Sent = { readonly booked: readonly Acknowledged[]; readonly ticked: readonly Acknowledged[] };

/** What must be nothing, each as a question that finds the rows that are wrong. $1 is the society. */
const wrongs: Readonly<Record<string, string>> = {
  'shares beyond a heap': `SELECT d."id" FROM "Delivery" d JOIN "Booking" b ON b."deliveryId" = d."id"
    WHERE d."societyId" = $1 GROUP BY d."id" HAVING sum(b."share") > d."heapLoads" OR sum(b."share") <> d."sharedLoads"`,
  'collections beyond a share, or not as counted': `SELECT b."id" FROM "Booking" b LEFT JOIN "Collection" c ON c."bookingId" = b."id"
    WHERE b."societyId" = $1 GROUP BY b."id" HAVING coalesce(sum(c."loads"), 0) <> b."collectedLoads" OR b."collectedLoads" > coalesce(b."share", 0)`,
  'collections beyond a heap, or not as counted': `SELECT d."id" FROM "Delivery" d LEFT JOIN "Collection" c ON c."deliveryId" = d."id"
    WHERE d."societyId" = $1 GROUP BY d."id" HAVING coalesce(sum(c."loads"), 0) <> d."collectedLoads" OR d."collectedLoads" > d."heapLoads"`,
  'collections without their one line in the book': `SELECT c."id" FROM "Collection" c LEFT JOIN "AuditRow" a ON a."thingId" = c."id" AND a."verb" = 'ticked off'
    WHERE c."societyId" = $1 GROUP BY c."id" HAVING count(a."id") <> 1`,
  'lines in the book without their collection': `SELECT a."id" FROM "AuditRow" a WHERE a."societyId" = $1 AND a."verb" = 'ticked off'
    AND NOT EXISTS (SELECT 1 FROM "Collection" c WHERE c."id" = a."thingId")`,
  'bookings without their one line in the book': `SELECT b."id" FROM "Booking" b LEFT JOIN "AuditRow" a ON a."thingId" = b."id" AND a."verb" = 'booked'
    WHERE b."societyId" = $1 GROUP BY b."id" HAVING count(a."id") <> 1`,
  'credits that do not sum to nothing': `SELECT "materialKey" FROM "CreditEntry" WHERE "societyId" = $1
    GROUP BY "materialKey" HAVING sum("changeMillionths") <> 0`,
  'entries of the ledger that do not balance': `SELECT "entryId" FROM "LedgerLine" WHERE "societyId" = $1 GROUP BY "entryId" HAVING sum("minor") <> 0`,
  'writes without a reply': `SELECT "writeId" FROM "WriteOnce" WHERE "societyId" = $1 AND "reply" IS NULL`,
};

/** Check what must hold after all of it, and that everything acknowledged is there once. Throws at the first that is wrong. */
export async function checkDays(databaseUrl: string, season: Season, size: Size, sent: Sent): Promise<void> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    for (const [what, question] of Object.entries(wrongs)) {
      const { rowCount } = await client.query(question, [season.id]);
      if (rowCount) throw new Error(`${what}: ${rowCount}`);
    }
    const all = size.members * size.deliveries;
    await checkKept(client, season, 'booked', sent.booked, all);
    await checkKept(client, season, 'ticked off', sent.ticked, all * size.loadsEach);
  } finally {
    await client.end();
  }
}

async function checkKept(
  client: pg.Client,
  { id }: Season,
  verb: string,
  sent: readonly Acknowledged[],
  wanted: number,
): Promise<void> {
  const { rows } = await client.query('SELECT "writeId" FROM "AuditRow" WHERE "societyId" = $1 AND "verb" = $2', [
    id,
    verb,
  ]);
  const kept = rows.map(({ writeId }) => String(writeId)).sort();
  const acknowledged = sent.map(({ writeId }) => writeId).sort();
  if (kept.length !== wanted) throw new Error(`${verb}: ${kept.length} in the book, ${wanted} wanted`);
  if (kept.join() !== acknowledged.join()) throw new Error(`${verb}: what is kept is not what was acknowledged`);
}
