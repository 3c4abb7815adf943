import 'server-only';
import { z } from 'zod';
import { feedOfMember } from '@/lib/data/calendar-feed';
import { db, inTransaction } from '@/lib/data/db';
import { endLetter, letterWishOf, setLetterWish, wishByToken } from '@/lib/data/weekly-letter';
import { canEnter } from '@/lib/domain/policy/standing';
import { now } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import { ownToken, sha256Hex } from '@/lib/platform/secret';
import { tokenInput, weeklyLetterInput } from '@/lib/schemas/reminders/reminders';
import { mutation, query } from '../operation';
import { refuse } from '../refusal';

/** Whether one has a calendar address and the weekly letter. */
export const readReminders = query({
  name: 'read-reminders',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db: reading, scope }) => {
    const feed = await feedOfMember(reading, scope);
    const letter = await letterWishOf(reading, scope);
    return { feedSince: feed?.createdAt ?? null, letter, timeZone: scope.timeZone };
  },
});

/** Have the weekly letter, or not. */
export const chooseWeeklyLetter = mutation({
  name: 'choose-weekly-letter',
  allow: canEnter,
  input: weeklyLetterInput,
  write: async ({ tx, scope, now: at, note }, { wanted }) => {
    const { hasAddress } = await letterWishOf(tx, scope);
    if (wanted && !hasAddress) refuse('no-address-for-mail', { field: 'wanted' });
    await setLetterWish(tx, scope, { wanted, tokenHash: sha256Hex(tokenOf(scope.memberId)), at });
    note({ verb: 'chose', thing: 'weekly letter', thingId: scope.memberId, after: { wanted } });
    return { wanted };
  },
});

// Worked out from the member and this installation's secret, so that every letter can carry it and only its hash is kept.
function tokenOf(memberId: string): string {
  return ownToken(`letter ${memberId}`);
}

/** Where a member's letter is ended without signing in: the page that asks, and what a mail program presses by itself. */
export function endsOf(memberId: string): { readonly pageUrl: string; readonly pressUrl: string } {
  const [home, token] = [env().nextAuthUrl, tokenOf(memberId)];
  return { pageUrl: `${home}/unsubscribe/${token}`, pressUrl: `${home}/api/unsubscribe/${token}` };
}

/** Of which society a token ends the letter, and whether it still comes; null where it is nobody’s. */
export async function readUnsubscribe(token: string): Promise<{ societyName: string; wanted: boolean } | null> {
  const parsed = tokenInput.safeParse(token);
  const wish = parsed.success ? await wishByToken(db(), sha256Hex(parsed.data)) : null;
  return wish && { societyName: wish.member.society.name, wanted: wish.wanted };
}

/** End the letter that a token names. Pressing twice is no harm; a token that is nobody’s does nothing. */
export async function unsubscribe(token: string): Promise<void> {
  const parsed = tokenInput.safeParse(token);
  if (parsed.success) await inTransaction((tx) => endLetter(tx, sha256Hex(parsed.data), now()));
}
