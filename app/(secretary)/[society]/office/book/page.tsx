import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { roleName } from '@/app/_ui/role-name';
import { SelectField, TextField } from '@/app/_ui/field';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readBook } from '@/lib/usecases/book/read-book';

export const metadata: Metadata = { title: 'The book of changes' };

type Search = { thing?: string; verb?: string; member?: string; from?: string; to?: string; page?: string };

export default async function BookPage({
  params,
  searchParams,
}: {
  params: Promise<{ society: string }>;
  searchParams: Promise<Search>;
}) {
  const { society } = await params;
  const search = await searchParams;
  const { rows, count, things, verbs, members, page, pages, timeZone } = await ask(readBook, society, search);
  const pageLink = (to: number) => `?${new URLSearchParams({ ...search, page: String(to) })}`;
  return (
    <>
      <PageHead
        title="The book of changes"
        lead={`${count.toLocaleString('en-GB')} changes. Nothing in it is ever altered or removed.`}
      />
      <form className="row wide" method="get">
        <SelectField
          name="thing"
          label="About"
          empty="everything"
          value={search.thing ?? ''}
          choices={things.map((thing) => ({ value: thing, label: thing }))}
          className="short-field"
        />
        <SelectField
          name="verb"
          label="What was done"
          empty="anything"
          value={search.verb ?? ''}
          choices={verbs.map((verb) => ({ value: verb, label: verb }))}
          className="short-field"
        />
        <SelectField
          name="member"
          label="By or for"
          empty="anybody"
          value={search.member ?? ''}
          choices={members.map(({ id, name }) => ({ value: id, label: name }))}
        />
        <TextField name="from" type="date" label="From" value={search.from} />
        <TextField name="to" type="date" label="To" value={search.to} />
        <button type="submit" className="button">
          Show
        </button>
      </form>
      <Sheet
        title="Changes"
        flush
        wide
        aside={
          pages > 1 ? (
            <span className="soft">
              page {page + 1} of {pages}
            </span>
          ) : null
        }
      >
        {rows.length === 0 ? <Empty>Nothing matches. Widen the days, or choose “everything”.</Empty> : null}
        <Table
          caption="Changes"
          columns={[{ head: 'when' }, { head: 'who' }, { head: 'what' }, { head: 'before' }, { head: 'after' }]}
          rows={rows.map(({ id, at, by, byRoles, forMember, forPlots, verb, thing, before, after }) => ({
            key: id,
            cells: [
              at.toLocaleString('en-GB', { dateStyle: 'medium', timeStyle: 'short', timeZone }),
              [
                by,
                ...byRoles.map(roleName),
                forMember ? `for ${forMember}` : '',
                forPlots ? `for plot ${forPlots}` : '',
              ]
                .filter(Boolean)
                .join(', '),
              `${thing} ${verb}`,
              <Facts key="before" of={before} />,
              <Facts key="after" of={after} />,
            ],
          }))}
        />
      </Sheet>
      <p className="wide row">
        {page > 0 ? (
          <Link className="button" href={pageLink(page - 1)}>
            Newer
          </Link>
        ) : null}
        {page + 1 < pages ? (
          <Link className="button" href={pageLink(page + 1)}>
            Older
          </Link>
        ) : null}
      </p>
    </>
  );
}

function Facts({ of }: { of: unknown }) {
  if (of === null || typeof of !== 'object') return <>–</>;
  return (
    <span className="small">
      {Object.entries(of).map(([key, value]) => (
        <span key={key} style={{ display: 'block' }}>
          {key}: {typeof value === 'object' && value !== null ? JSON.stringify(value) : String(value)}
        </span>
      ))}
    </span>
  );
}
