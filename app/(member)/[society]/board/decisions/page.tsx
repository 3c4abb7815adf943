import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readBallots } from '@/lib/usecases/ballots/read-ballots';
import { outcomeWords, ruleWords } from './_parts/ballot-words';

export const metadata: Metadata = { title: 'Decisions' };

const mine = { none: 'no hand in it', raised: 'raised', 'not-yet': 'not raised yet' } as const;

export default async function DecisionsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { open, drafts, closed, withdrawn, keeps, timeZone } = await ask(readBallots, society);
  const at = `/${society}/board/decisions`;
  return (
    <>
      <PageHead title="Decisions" lead="Questions that the committee puts to a count of hands, and what came of them.">
        {keeps ? (
          <Link className="button first" href={`${at}/new`}>
            Put a question
          </Link>
        ) : null}
        <Link className="button" href={`${at}/minutes`}>
          Minutes
        </Link>
        <Link className="button" href={`/${society}/board`}>
          The board
        </Link>
      </PageHead>
      {keeps && drafts.length ? (
        <Sheet title="Drafts, for the committee">
          <ul className="plain-list">
            {drafts.map(({ id, title }) => (
              <li key={id}>
                <Link href={`${at}/${id}`}>{title}</Link>
              </li>
            ))}
          </ul>
        </Sheet>
      ) : null}
      <Sheet title="Open for hands" wide flush>
        {open.length ? null : (
          <Empty>
            Nothing is put to a count of hands just now.{' '}
            {keeps ? 'Put a question.' : 'What you would like to be decided, say on the board or to the committee.'}
          </Empty>
        )}
        <Table
          caption="Questions that are open for hands"
          columns={[{ head: 'question' }, { head: 'your hand' }, { head: 'raised', number: true }, { head: 'closes' }]}
          rows={open.map(({ id, title, closesAt, entitled, raised, setting, mine: own }) => ({
            key: id,
            mine: own === 'not-yet',
            cells: [
              <div key="title">
                <Link href={`${at}/${id}`}>{title}</Link>
                {setting ? <div className="small soft">{ruleWords(setting)}</div> : null}
              </div>,
              mine[own],
              `${raised} of ${entitled}`,
              whenWords(closesAt, timeZone),
            ],
          }))}
        />
      </Sheet>
      <Sheet title="Decided" wide flush>
        {closed.length ? null : <Empty>Nothing was decided yet. What is, stands here and in the minutes.</Empty>}
        <Table
          caption="Decisions, the newest first"
          columns={[
            { head: 'no.', number: true },
            { head: 'question' },
            { head: 'what came of it' },
            { head: 'closed' },
          ]}
          rows={closed.map(({ id, number, title, kind, closesAt, result }) => ({
            key: id,
            cells: [
              number,
              <Link key="title" href={`${at}/${id}`}>
                {title}
              </Link>,
              outcomeWords(result.outcome, result.carried, kind),
              whenWords(closesAt, timeZone),
            ],
          }))}
        />
      </Sheet>
      {withdrawn.length ? (
        <Sheet title="Withdrawn">
          <ul className="plain-list">
            {withdrawn.map(({ id, title, withdrawnWhy }) => (
              <li key={id}>
                <Link href={`${at}/${id}`}>{title}</Link> <span className="soft">because: “{withdrawnWhy}”</span>
              </li>
            ))}
          </ul>
        </Sheet>
      ) : null}
    </>
  );
}
