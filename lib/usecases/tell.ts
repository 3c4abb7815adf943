import 'server-only';
import { queueMail } from '@/lib/data/mail';
import { addressByMember, mailAddresses } from '@/lib/data/member-mail';
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

export type Told = { readonly memberIds: readonly string[]; readonly body: string };

/** Queue mails of one subject that say to each something of their own; an address that several share gets each of them. */
export async function tellEach(
  { tx, scope, today }: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  subject: string,
  told: readonly Told[],
): Promise<void> {
  const ids = told.flatMap(({ memberIds }) => memberIds);
  const addressOf = await addressByMember(tx, scope, [...new Set(ids)], today);
  const mails = told.flatMap(({ memberIds, body }) =>
    [...new Set(memberIds.flatMap((id) => addressOf.get(id) ?? []))].map((to) => ({ to, body })),
  );
  const common = { subject: `${scope.societyName}: ${subject}`, societyId: scope.societyId };
  await queueMail(
    tx,
    mails.map((mail) => ({ ...mail, ...common })),
  );
}
