import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { say } from '../../scripts/start/steps.mjs';
import { plainOrder } from '../fixtures/sheet-orders';
import { turnByTurn } from './closed-loop';
import { page } from './http';
import { serve } from './service';
import { figure, type Section, times } from './table';
import { type Visitor, visitorOf } from './visitors';

const sizes = [6, 24, 96] as const;

/** A ground sheet as it is followed and as it is printed, drawings and all, beside the page people open most. */
export async function measureSheetPage(
  databaseUrl: string,
  visitors: readonly Visitor[],
  seconds: number,
): Promise<Section> {
  say('ground sheets: their pages');
  const visitor = visitorOf(visitors, false, 0);
  const sheets = await makeSheets(databaseUrl, visitor);
  const service = await serve(databaseUrl);
  const at = (path: string) => () => page(`${service.address}/${visitor.slug}${path}`, visitor.cookie);
  const works: Record<string, () => Promise<Buffer>> = { 'This week': at('') };
  for (const [trenches, id] of sheets) {
    works[`A sheet of ${trenches} trenches, half done`] = at(`/ground/sheets/${id}`);
    works[`The same of ${trenches}, to print`] = at(`/ground/sheets/${id}/print`);
  }
  try {
    const bytes = new Map<string, number>();
    for (const [name, open] of Object.entries(works)) bytes.set(name, (await open()).length);
    const loads = await turnByTurn(works, { connections: 1, seconds, rounds: 3 });
    const week = loads['This week']?.p50Ms ?? 0;
    return {
      title: 'The ground sheet’s pages, beside This week',
      heads: ['page', 'kB', 'p50, ms', 'p95, ms', 'times this week'],
      rows: Object.entries(loads).map(([name, { p50Ms, p95Ms }]) => [
        name,
        figure((bytes.get(name) ?? 0) / 1000),
        figure(p50Ms, 1),
        figure(p95Ms, 1),
        times(p50Ms, week),
      ]),
      notes: [
        'One connection. Drawings are drawn anew for each page; nothing of them is kept, and nothing is compressed.',
      ],
    };
  } finally {
    await service.stop();
  }
}

/** Sheets of ever more trenches on the visitor's first bed, the first half of each ticked. */
async function makeSheets(databaseUrl: string, { plotId }: Visitor): Promise<[number, string][]> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  const { rows } = await client.query(
    `SELECT b."id" AS "bedId", b."societyId", b."frameId", b."xCm", b."yCm", t."holdingId", h."memberId"
     FROM "Bed" b JOIN "Tenancy" t ON t."plotId" = b."plotId" JOIN "HoldingMember" h ON h."holdingId" = t."holdingId"
     WHERE b."plotId" = $1 ORDER BY b."name" LIMIT 1`,
    [plotId],
  );
  const { bedId, societyId, frameId, xCm, yCm, holdingId, memberId } = rows[0];
  const sheets: [number, string][] = [];
  for (const trenches of sizes) {
    const id = randomUUID();
    const where = [id, societyId, bedId, frameId, holdingId, xCm, yCm, trenches * plainOrder.trenchWidthCm];
    await client.query(
      `INSERT INTO "GroundSheet" ("id", "societyId", "bedId", "frameId", "holdingId", "xCm", "yCm", "widthCm", "lengthCm",
         "season", "cropGroup", "order", "madeByMemberId")
       VALUES ($1, $2, $3, $4, $5, $6, $7, 120, $8, 2027, 'alliums', $9, $10)`,
      [...where, JSON.stringify(plainOrder), memberId],
    );
    await client.query(
      `INSERT INTO "TrenchTick" ("id", "societyId", "sheetId", "trench", "doneOn", "byMemberId")
       SELECT gen_random_uuid(), $1, $2, nth, current_date - 1, $3 FROM generate_series(1, $4::int) nth`,
      [societyId, id, memberId, trenches / 2],
    );
    sheets.push([trenches, id]);
  }
  await client.end();
  return sheets;
}
