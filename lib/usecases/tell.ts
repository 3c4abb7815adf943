import 'server-only';
import { queueMail } from '@/lib/data/mail';
import { mailAddresses } from '@/lib/data/member-mail';
import type { WriteContext } from './operation';

/** Queue one mail for each member of today who has an address, in the transaction that causes it. */
export async function tell(
  { tx, scope, today }: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  memberIds: readonly string[],
  subject: string,
  body: string,
): Promise<void> {
  const addresses = await mailAddresses(tx, scope, memberIds, today);
  await queueMail(
    tx,
    addresses.map((to) => ({ to, subject: `${scope.societyName}: ${subject}`, body, societyId: scope.societyId })),
  );
}
