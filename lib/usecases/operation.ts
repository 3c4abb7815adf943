import 'server-only';
import type { z } from 'zod';
import { type Change, writeAudit } from '@/lib/data/audit';
import { type Db, db, inTransaction, type Isolation, type Json, type Tx } from '@/lib/data/db';
import { openScope, type Scope } from '@/lib/data/scope';
import { claimWrite, keepReply } from '@/lib/data/write-once';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Standing } from '@/lib/domain/policy/standing';
import { dayIn, now, todayIn } from '@/lib/platform/clock';
import { NotFound, type Outcome, Refused, refuse } from './refusal';

/** Who calls, and in which society: an account that the session vouched for, and the society in the address. */
export type Caller = { readonly accountId: string; readonly sessionVersion: number; readonly slug: string };

export type ReadContext = { readonly db: Db; readonly scope: Scope; readonly now: Date; readonly today: CalendarDate };
export type WriteContext = Omit<ReadContext, 'db'> & {
  readonly tx: Tx;
  readonly writeId: string;
  /** Note a change for the book; all are written with the transaction. */
  readonly note: (change: Change) => void;
};

type Common = { readonly name: string; readonly allow: (viewer: Standing) => boolean };
type WriteInput = { writeId: string };

/**
 * One mutation, one path: parse, scope, authorise, claim the write's id, decide and write in one transaction
 * with its audit rows. A refusal or a failure rolls all of it back, the claimed id included.
 */
export function mutation<Schema extends z.ZodType<WriteInput>, Reply extends Json, Shown = Reply>(
  definition: Common & {
    readonly input: Schema;
    readonly isolation?: Isolation;
    readonly write: (context: WriteContext, input: z.output<Schema>) => Promise<Reply>;
    /** What the caller is shown, where that must not be kept: the kept reply holds the id of a link, and not the link. */
    readonly show?: (reply: Reply) => Shown;
  },
) {
  const show = definition.show ?? ((reply: Reply) => reply as unknown as Shown);
  async function run(caller: Caller, raw: unknown): Promise<Outcome<Shown>> {
    const parsed = definition.input.safeParse(raw);
    const scope = await enter(caller, definition.allow);
    if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
    const instant = now();
    const today = dayIn(scope.timeZone, instant);
    return settle(async () => {
      const reply = await inTransaction(async (tx) => {
        const claim = await claimWrite(tx, scope, parsed.data.writeId, definition.name);
        if (claim === 'foreign') refuse('write-id-used');
        if (claim !== 'first') return claim.reply as Reply;
        const changes: Change[] = [];
        const note = (change: Change) => void changes.push(change);
        const context = { tx, scope, now: instant, today, writeId: parsed.data.writeId, note };
        const reply = await definition.write(context, parsed.data);
        await writeAudit(tx, scope, parsed.data.writeId, instant, changes);
        await keepReply(tx, scope, parsed.data.writeId, reply);
        return reply;
      }, definition.isolation);
      return show(reply);
    });
  }
  return { kind: 'mutation' as const, name: definition.name, run };
}

/** One read: parse, scope, authorise, and a minimal answer. Outsiders and bad addresses get not-found. */
export function query<Schema extends z.ZodType, Answer>(
  definition: Common & {
    readonly input: Schema;
    readonly read: (context: ReadContext, input: z.output<Schema>) => Promise<Answer>;
  },
) {
  async function run(caller: Caller, raw: unknown): Promise<Answer> {
    const scope = await enter(caller, definition.allow);
    const parsed = definition.input.safeParse(raw);
    if (!parsed.success) throw new NotFound();
    const instant = now();
    return definition.read({ db: db(), scope, now: instant, today: dayIn(scope.timeZone, instant) }, parsed.data);
  }
  return { kind: 'query' as const, name: definition.name, run };
}

async function enter(caller: Caller, allow: Common['allow']): Promise<Scope> {
  const scope = await openScope(db(), caller, todayIn);
  if (!scope || !allow(scope)) throw new NotFound();
  return scope;
}

/** Turn a refusal thrown inside into an outcome; let everything else fly. */
export async function settle<T>(work: () => Promise<T>): Promise<Outcome<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusals: error.refusals };
    throw error;
  }
}

/** A schema's complaints, each beside its field. */
export function wordsOf(error: z.ZodError) {
  return error.issues.map(({ path, message }) => ({
    code: 'input' as const,
    ...(path.length ? { field: path.join('.') } : {}),
    words: message,
  }));
}
