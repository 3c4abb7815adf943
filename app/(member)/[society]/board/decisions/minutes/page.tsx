import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readMinutes } from '@/lib/usecases/ballots/read-ballots';
import { PostBody } from '../../_parts/post-body';
import { appliedWords, carriesWords, outcomeWords, quorumWords, ruleWords, whenInYear } from '../_parts/ballot-words';
import { ResultTable } from '../_parts/result-table';

export const metadata: Metadata = { title: 'Minutes of decisions' };

export default async function MinutesPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { societyName, timeZone, today, decisions } = await ask(readMinutes, society);
  return (
    <div className="season-paper wide">
      <PageHead
        title={`${societyName}: decisions by a count of hands`}
        lead={`The newest first, as they stood on ${dayWords(today)}. Members only.`}
      >
        <PrintButton>Print</PrintButton>
        <Link className="button" href={`/${society}/board/decisions`}>
          All decisions
        </Link>
      </PageHead>
      {decisions.length === 0 ? <Empty>Nothing was decided yet. Once a count closes, it is minuted here.</Empty> : null}
      {decisions.map((one) => (
        <Sheet key={one.id} title={`${one.number}. ${one.title}`} wide>
          <p>
            <strong>{sentence(outcomeWords(one.result.outcome, one.result.carried, one.kind))}</strong>{' '}
            {one.setting ? `Put: ${ruleWords(one.setting)}. ${appliedWords(one.applied, one.result.outcome)}` : null}
          </p>
          <PostBody body={one.body} />
          <ResultTable title={one.title} result={one.result} />
          <p className="small soft">
            Opened {whenInYear(one.openedAt, timeZone)}, closed {whenInYear(one.closesAt, timeZone)}. One hand for each{' '}
            {one.handsBy}; quorum: {quorumWords(one.quorum, one.result.needed)}; carries with{' '}
            {carriesWords(one.carriedBy, one.kind)}.
          </p>
        </Sheet>
      ))}
    </div>
  );
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
