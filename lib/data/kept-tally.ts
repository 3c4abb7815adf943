import 'server-only';
import type { FrameTally } from '@/lib/domain/rotation/frame-tally';
import type { Db } from './db';
import type { Scope } from './scope';

/** A frame as it stands now, with what is still true of it in the seasons asked for. */
export type TalliedFrame = {
  readonly frameId: string;
  readonly revision: bigint;
  /** By season; a season that is missing is to be worked out. */
  readonly tallies: ReadonlyMap<number, FrameTally>;
};

/** A season, and the rules it is judged by, as a hash. */
export type SeasonRules = { readonly season: number; readonly rules: string };

/**
 * The frames of a site with their kept tallies: those worked out by the same rules, and no write to their ground since.
 * Read before the ground itself, so that what is then worked out is never older than the revision it is kept under.
 */
export async function keptTallies(
  db: Db,
  scope: Scope,
  siteId: string,
  wanted: readonly SeasonRules[],
): Promise<TalliedFrame[]> {
  const [seasons, rules] = [wanted.map(({ season }) => season), wanted.map((one) => one.rules)];
  // One row a frame: a driver reads few long texts far faster than many short rows.
  const frames = await db.$queryRaw<{ frameId: string; revision: bigint; tallies: string | null }[]>`
    SELECT f."id" AS "frameId", f."revision", kept."tallies"
    FROM "Frame" f LEFT JOIN LATERAL (
      SELECT json_agg(json_build_array(t."season", t."tally"))::text AS "tallies"
      FROM "KeptTally" t JOIN unnest(${seasons}::int[], ${rules}::text[]) AS w("season", "rules")
        ON w."season" = t."season" AND w."rules" = t."rules"
      WHERE t."frameId" = f."id" AND t."societyId" = f."societyId" AND t."revision" = f."revision") kept ON true
    WHERE f."societyId" = ${scope.societyId}::uuid AND f."siteId" = ${siteId}::uuid
    ORDER BY f."id"`;
  return frames.map(({ frameId, revision, tallies }) => ({
    frameId,
    revision,
    tallies: new Map(tallies ? (JSON.parse(tallies) as [number, FrameTally][]) : []),
  }));
}

/** Keep what was worked out; a newer one that another process kept meanwhile stays. */
export async function keepTallies(
  db: Db,
  scope: Scope,
  made: readonly (SeasonRules & { frameId: string; revision: bigint; tally: FrameTally })[],
): Promise<void> {
  const rows = made.map((one) => ({ ...one, revision: String(one.revision) }));
  await db.$executeRaw`
    INSERT INTO "KeptTally" ("societyId", "frameId", "season", "revision", "rules", "tally")
    SELECT ${scope.societyId}::uuid, r."frameId", r."season", r."revision", r."rules", r."tally"
    FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
      AS r("frameId" uuid, "season" int, "revision" bigint, "rules" text, "tally" jsonb)
    ORDER BY r."frameId", r."season"
    ON CONFLICT ("frameId", "season") DO UPDATE
      SET "revision" = EXCLUDED."revision", "rules" = EXCLUDED."rules", "tally" = EXCLUDED."tally"
      WHERE "KeptTally"."revision" <= EXCLUDED."revision"`;
}
