import pg from 'pg';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';

/** Anything that a person can do or ask. */
export type Operation = {
  readonly kind: 'mutation' | 'query';
  readonly name: string;
  readonly run: (caller: Caller, raw: unknown) => Promise<unknown>;
};

/** Who may do it, beside the secretary, and with what input of this society. */
export type Row = {
  readonly operation: Operation;
  readonly input: (ids: Ids) => object;
  /** Members of the society who must be turned away as if it were not there. */
  readonly deny: readonly ('member' | 'neighbour' | 'treasurer' | 'gate_helper')[];
};

/** The ids of the society under test that inputs name. */
export type Ids = Readonly<
  Record<
    | 'siteId'
    | 'plotId'
    | 'otherPlotId'
    | 'bedId'
    | 'otherBedId'
    | 'plantingId'
    | 'workId'
    | 'holdingId'
    | 'memberId'
    | 'leftMemberId'
    | 'deliveryId'
    | 'sharedId'
    | 'bookingId',
    string
  >
>;

/** How an operation answers somebody: not found, refused in words, or done. */
export async function answerTo(
  operation: Operation,
  caller: Caller,
  input: object,
): Promise<'not found' | 'refused' | 'done'> {
  try {
    const outcome = (await operation.run(caller, input)) as { ok?: boolean } | null;
    return operation.kind === 'mutation' && outcome?.ok === false ? 'refused' : 'done';
  } catch (error) {
    if (error instanceof NotFound) return 'not found';
    throw error;
  }
}

/** A fingerprint of every row in the database, to show that nothing was touched. */
export async function fingerprint(): Promise<string> {
  const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
  await client.connect();
  try {
    const { rows: tables } = await client.query<{ name: string }>(
      `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' AND tablename NOT LIKE '\\_%' ORDER BY 1`,
    );
    const sums: string[] = [];
    for (const { name } of tables) {
      const { rows } = await client.query<{ sum: string }>(
        `SELECT coalesce(md5(string_agg(t::text, '|' ORDER BY t::text)), '') AS sum FROM "${name}" t`,
      );
      sums.push(`${name} ${rows[0]?.sum}`);
    }
    return sums.join('\n');
  } finally {
    await client.end();
  }
}
