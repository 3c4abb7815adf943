import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readBallots } from '@/lib/usecases/ballots/read-ballots';
import { outcomeWords, ruleWords, whenInYear } from './_parts/ballot-words';

export const metadata: Metadata = { title: 'Decisions' };

const mine = { none: 'you have no hand in it', raised: 'your hand is raised', 'not-yet': 'raise your hand' } as const;

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
      <Sheet title="Open for hands" wide>
        {open.length ? null : (
          <Empty>
            Nothing is put to a count of hands just now.{' '}
            {keeps ? 'Put a question.' : 'What you would like to be decided, say on the board or to the committee.'}
          </Empty>
        )}
        <ul className="plain-list">
          {open.map(({ id, title, closesAt, entitled, raised, setting, mine: own }) => (
            <li key={id} className="ruled">
              <Link href={`${at}/${id}`}>{title}</Link>
              <p>
                <span className={own === 'not-yet' ? 'mark short' : 'mark quiet'}>{mine[own]}</span>{' '}
                <span className="small">
                  {raised} of {entitled} hands raised · closes {whenInYear(closesAt, timeZone)}
                </span>
              </p>
              {setting ? <p className="small soft">If it is carried: {ruleWords(setting)}</p> : null}
            </li>
          ))}
        </ul>
      </Sheet>
      <Sheet title="Decided" wide>
        {closed.length ? null : <Empty>Nothing was decided yet. What is, stands here and in the minutes.</Empty>}
        <ul className="plain-list">
          {closed.map(({ id, number, title, kind, closesAt, result }) => (
            <li key={id} className="ruled">
              {number}. <Link href={`${at}/${id}`}>{title}</Link>
              <p>
                <strong>{outcomeWords(result.outcome, result.carried, kind)}</strong>{' '}
                <span className="small soft">· {whenInYear(closesAt, timeZone)}</span>
              </p>
            </li>
          ))}
        </ul>
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
