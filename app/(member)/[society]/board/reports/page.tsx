import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readReports } from '@/lib/usecases/board/keep-order';

export const metadata: Metadata = { title: 'Reported posts' };

export default async function ReportsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { reports, timeZone } = await ask(readReports, society);
  return (
    <>
      <PageHead
        title="Reported posts"
        lead="What members told the committee of. Hide a post with a reason, or let it stand."
      />
      <Sheet title="Nobody has looked yet" wide flush>
        {reports.length === 0 ? <Empty>Nothing was reported. There is nothing to do here.</Empty> : null}
        <Table
          caption="Reported posts"
          columns={[{ head: 'thread' }, { head: 'why' }, { head: 'told by' }, { head: '' }]}
          rows={reports.map(({ id, why, at, by, post }) => ({
            key: id,
            cells: [
              post.thread.title,
              why,
              `${by.name}, ${whenWords(at, timeZone)}`,
              <Link key="look" href={`/${society}/board/posts/${post.id}`}>
                Look at it
              </Link>,
            ],
          }))}
        />
      </Sheet>
    </>
  );
}
