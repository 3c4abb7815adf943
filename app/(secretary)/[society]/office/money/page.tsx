import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { accountWords } from '@/app/_ui/money-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { readMoney } from '@/lib/usecases/money/read-money';

export const metadata: Metadata = { title: 'Money' };

export default async function MoneyPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { holdings, others, sumMinor, keeps } = await ask(readMoney, society);
  const room = `/${society}/office/money`;
  const sums = holdings.map(({ minor }) => minor);
  const owed = sums.filter((minor) => minor > 0).reduce((sum, minor) => sum + minor, 0);
  const inCredit = sums.filter((minor) => minor < 0).reduce((sum, minor) => sum - minor, 0);
  const owing = sums.filter((minor) => minor > 0).length;
  const at = (account: string) => others.find((one) => one.account === account)?.minor ?? 0;
  return (
    <>
      <PageHead
        title="Money"
        lead={`${owing} ${owing === 1 ? 'holding owes' : 'holdings owe'} ${formatPounds(owed)} in all. ${formatPounds(at('bank'))} in the bank, ${formatPounds(at('cash'))} in cash; suppliers are owed ${formatPounds(-at('other:suppliers'))}.`}
      >
        {keeps ? (
          <Link className="button first" href={`${room}/enter`}>
            Enter a payment or a charge
          </Link>
        ) : null}
        <Link className="button" href={`${room}/deliveries`}>
          Deliveries to the penny
        </Link>
        <Link className="button" href={`${room}/ledger`}>
          The ledger
        </Link>
        <Link className="button" href={`${room}/accounts`}>
          Accounts, and how to pay
        </Link>
      </PageHead>
      <Sheet
        title="What each holding owes"
        flush
        aside={<a href={`/api/money/${society}?what=balances`}>All balances as CSV</a>}
      >
        {holdings.length === 0 ? <Empty>No plot is let yet. An account begins with a plot.</Empty> : null}
        <Table
          caption="What each holding owes"
          columns={[
            { head: 'plot' },
            { head: 'holders' },
            { head: 'owes', number: true },
            { head: 'in credit', number: true },
          ]}
          rows={holdings.map(({ holdingId, plots, members, endedOn, minor }) => ({
            key: holdingId,
            cells: [
              <Link key="plot" href={`${room}/holdings/${holdingId}`}>
                {plots.join(', ') || 'no plot'}
              </Link>,
              `${members.map(({ name }) => name).join(' and ')}${endedOn ? ' (given up)' : ''}`,
              minor > 0 ? formatPounds(minor) : '',
              minor < 0 ? formatPounds(-minor) : '',
            ],
          }))}
          foot={['all', '', formatPounds(owed), formatPounds(inCredit)]}
        />
      </Sheet>
      <Sheet title="The other accounts" flush>
        <Table
          caption="The other accounts"
          columns={[{ head: 'account' }, { head: 'stands on it', number: true }]}
          rows={others.map(({ account, name, minor }) => ({
            key: account,
            cells: [
              account.startsWith('purchases:') ? (
                <Link key="name" href={`${room}/deliveries/${account.slice('purchases:'.length)}`}>
                  {accountWords(account, name)}
                </Link>
              ) : (
                <Link key="name" href={`${room}/ledger?account=${encodeURIComponent(account)}`}>
                  {accountWords(account, name)}
                </Link>
              ),
              formatPounds(minor),
            ],
          }))}
          foot={['with the holdings, all sum to', formatPounds(sumMinor)]}
        />
        <p className="sheet-body small soft">
          Above nothing the society has it, or is owed it. Below nothing (−) the society owes it, or took it in:
          suppliers not yet paid, charges for seed and rents.
        </p>
      </Sheet>
    </>
  );
}
