import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readBallot } from '@/lib/usecases/ballots/read-ballots';
import { PostBody } from '../../_parts/post-body';
import { appliedWords, handsWords, outcomeWords, rulesOfCount, ruleWords, whenInYear } from '../_parts/ballot-words';
import { CommitteeSheets } from '../_parts/committee-sheets';
import { RaiseSheet } from '../_parts/raise-sheet';
import { ResultTable } from '../_parts/result-table';

export const metadata: Metadata = { title: 'A count of hands' };

type Props = { params: Promise<{ society: string; ballot: string }> };
type Read = Awaited<ReturnType<typeof readBallot.run>>;

export default async function BallotPage({ params }: Props) {
  const { society, ballot: ballotId } = await params;
  const read = await ask(readBallot, society, { ballotId });
  const { ballot, needed, result, timeZone } = read;
  return (
    <>
      <PageHead title={ballot.title} lead={standingWords(read)}>
        <Link className="button" href={`/${society}/board/decisions`}>
          All decisions
        </Link>
      </PageHead>
      {result ? (
        <Sheet title="What came of it" wide flush>
          <ResultTable title={ballot.title} result={result} />
        </Sheet>
      ) : null}
      <Sheet title="The question">
        <PostBody body={ballot.body} />
        {ballot.setting ? (
          <p>
            If it is carried: {ruleWords(ballot.setting)}. {result ? appliedWords(ballot.applied, result.outcome) : ''}{' '}
            <Link href={`/${society}/office/settings`}>The society’s rules</Link>
          </p>
        ) : null}
        {ballot.kind === 'choice' ? (
          <ul>
            {ballot.choices.map(({ id, words }) => (
              <li key={id}>{words}</li>
            ))}
          </ul>
        ) : null}
        <dl>
          {rulesOfCount(ballot, needed, timeZone).map(([name, value]) => [
            <dt key={name}>{name}</dt>,
            <dd key={`${name} is`}>{value}</dd>,
          ])}
        </dl>
      </Sheet>
      {ballot.state === 'open' ? <RaiseSheet society={society} read={read} /> : null}
      <CommitteeSheets society={society} read={read} />
    </>
  );
}

function standingWords({ ballot, raised, result, timeZone }: Read): string {
  const { state, closesAt, closedAt, number, entitled, withdrawnAt, withdrawnWhy, kind } = ballot;
  if (state === 'draft') return 'A draft, which the committee alone reads.';
  if (state === 'withdrawn')
    return `Withdrawn ${whenInYear(withdrawnAt ?? closesAt, timeZone)}, because: “${withdrawnWhy}”.`;
  if (result && closedAt)
    return `Decision ${number}: ${outcomeWords(result.outcome, result.carried, kind)}. Closed ${whenInYear(closesAt, timeZone)}.`;
  return `${handsWords(raised)} of ${entitled} raised. Closes ${whenInYear(closesAt, timeZone)}.`;
}
