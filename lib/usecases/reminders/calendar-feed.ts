import 'server-only';
import { createFeed, feedByToken, feedOfMember, keepTold, lockFeed, revokeFeeds } from '@/lib/data/calendar-feed';
import { db, inTransaction } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { canEnter } from '@/lib/domain/policy/standing';
import { feedTold, type Told } from '@/lib/domain/reminders/feed-told';
import { dayIn, now, todayIn } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import { ownToken, sha256Hex } from '@/lib/platform/secret';
import { makeFeedInput, revokeFeedInput, tokenInput } from '@/lib/schemas/reminders/reminders';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { datesOfMember, ownHoldings } from '../week/due';

/** What a calendar is told, with whose it is. */
export type Feed = {
  readonly societyId: string;
  readonly societyName: string;
  readonly slug: string;
  readonly timeZone: string;
  readonly told: readonly Told[];
};

/** Make a private calendar address, which is shown this once; one that was there before works no more. */
export const makeFeed = mutation({
  name: 'make-feed',
  allow: canEnter,
  input: makeFeedInput,
  write: async ({ tx, scope, now: at, writeId, note }) => {
    const replaced = await revokeFeeds(tx, scope, at);
    // The feed is named by the write that made it, so that a form sent twice shows the same address.
    await createFeed(tx, scope, writeId, sha256Hex(tokenOf(writeId)), at);
    note({ verb: replaced ? 'made anew' : 'made', thing: 'calendar', thingId: writeId });
    return { feedId: writeId };
  },
  show: ({ feedId }) => ({ address: addressOf(feedId) }),
});

/** Take one’s calendar address back: from now on it leads nowhere. */
export const revokeFeed = mutation({
  name: 'revoke-feed',
  allow: canEnter,
  input: revokeFeedInput,
  write: async ({ tx, scope, now: at, note }) => {
    const feed = await feedOfMember(tx, scope);
    if (!feed || !(await revokeFeeds(tx, scope, at))) refuse('no-calendar');
    note({ verb: 'took back', thing: 'calendar', thingId: feed.id });
    return {};
  },
});

// Worked out from its id and this installation's secret, as links of invitations are: only the hash is kept.
function tokenOf(feedId: string): string {
  return ownToken(`calendar ${feedId}`);
}

function addressOf(feedId: string): string {
  return `${env().nextAuthUrl}/calendar/${tokenOf(feedId)}.ics`;
}

/**
 * What a private calendar address tells whoever has it: nothing but its member’s own days. It is read without signing in, and what it
 * told is kept, so that a calendar learns of changes. Null where it leads nowhere.
 */
export async function readFeed(token: string): Promise<Feed | null> {
  const parsed = tokenInput.safeParse(token);
  const found = parsed.success ? await feedByToken(db(), sha256Hex(parsed.data), todayIn) : null;
  if (!found) return null;
  const scope = await openScopeOfMember(db(), found.memberId);
  const instant = now();
  const today = dayIn(scope.timeZone, instant);
  const context = { db: db(), scope, now: instant, today };
  const dates = await datesOfMember(context, await ownHoldings(context));
  const told = await inTransaction(async (tx) => {
    const before = await lockFeed(tx, scope, found.feedId);
    if (!before) return null;
    const next = feedTold(before, dates, today, instant.getTime());
    await keepTold(tx, scope, found.feedId, { before, now: next });
    return next;
  });
  if (!told) return null;
  const { societyId, societyName, slug, timeZone } = scope;
  return { societyId, societyName, slug, timeZone, told };
}
