import { db } from '@/lib/data/db';
import { dayIn } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import { newToken } from '@/lib/platform/secret';

// One empty society, and a link that lets its secretary in.
const name = process.env.BARROWMOOT_SOCIETY ?? 'Our society';
const slug =
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '') || 'society';
if (await db().society.findFirst({ select: { id: true } })) {
  console.error('This database holds a society already, so none was made.');
  process.exit(1);
}
const now = new Date();
const society = await db().society.create({ data: { slug, name } });
const joinedOn = new Date(dayIn('Europe/London', now));
const member = await db().member.create({ data: { societyId: society.id, name: 'The secretary', joinedOn } });
await db().memberRole.create({ data: { societyId: society.id, memberId: member.id, role: 'secretary' } });
const { token, tokenHash } = newToken();
const expiresAt = new Date(now.getTime() + 14 * 86_400_000);
await db().invitation.create({ data: { societyId: society.id, memberId: member.id, tokenHash, expiresAt } });
await db().$disconnect();
console.log(
  `\n  ${name} is made. The secretary comes in by this link, once, within a fortnight:\n  ${env().nextAuthUrl}/join/${token}\n`,
);
