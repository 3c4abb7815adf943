import { csvReply } from '@/app/_server/csv-reply';
import { readAccountCsv } from '@/lib/usecases/money/read-account';
import { readLedgerCsv } from '@/lib/usecases/money/read-ledger';
import { readBalancesCsv } from '@/lib/usecases/money/read-money';

const files = new Map([
  ['account', readAccountCsv],
  ['ledger', readLedgerCsv],
  ['balances', readBalancesCsv],
]);

/** An account, the ledger or the balances, as a file. */
export async function GET(request: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  const { what = '', ...asked } = Object.fromEntries(new URL(request.url).searchParams);
  return csvReply((await params).society, files.get(what), asked);
}
