import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readSharing } from '@/lib/usecases/notes/read-sharing';
import { sharingAction } from '../actions';
import { WhatIsShared } from '../_parts/what-is-shared';

export const metadata: Metadata = { title: 'What is shared' };

type Read = Awaited<ReturnType<typeof readSharing.run>>;

export default async function SharingPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { holdings, timeZone } = await ask(readSharing, society);
  return (
    <>
      <PageHead
        title="What is shared"
        lead="Nothing is, until you agree. You may take it back at any time: from the next page that anybody opens, yours is gone."
      >
        <Link className="button" href={`/${society}/board/results`}>
          Comparing notes
        </Link>
      </PageHead>
      <WhatIsShared />
      <div className="stack">
        {holdings.length === 0 ? (
          <Sheet title="Your results" flush>
            <Empty>You hold no ground at present, so there is nothing of yours to compare.</Empty>
          </Sheet>
        ) : null}
        {holdings.map((holding) => (
          <OwnHolding key={holding.id} {...{ society, holding, timeZone }} />
        ))}
      </div>
    </>
  );
}

type Props = { society: string; holding: Read['holdings'][number]; timeZone: string };

function OwnHolding({ society, holding: { id, plots, words, isShared }, timeZone }: Props) {
  const mine = words.find(({ isMine }) => isMine)?.shares ?? null;
  const act = (shares: 'yes' | 'no') => sharingAction.bind(null, society, id, shares);
  return (
    <Sheet title={plots.length === 1 ? `Plot ${plots[0]}` : `Plots ${plots.join(', ')}`}>
      <p className={isShared ? 'notice kept' : 'notice'}>
        {isShared ? 'What these beds gave is compared.' : 'What these beds gave is compared with nothing.'}
      </p>
      <ul>
        {words.map(({ memberId, name, isMine, shares, at }) => (
          <li key={memberId}>
            {isMine ? 'You' : name}: {saidWords(shares, isMine)}
            {at ? <span className="soft small"> {whenWords(at, timeZone)}</span> : null}
          </li>
        ))}
      </ul>
      {words.length > 1 ? <p className="soft">One of you must agree, and none say no.</p> : null}
      <div className="stack">
        {mine === true ? null : <Form action={act('yes')} writeId={randomUUID()} submit="Let them be compared" />}
        {mine === true || (mine === null && words.length > 1) ? (
          <Form action={act('no')} writeId={randomUUID()} submit={mine ? 'Take it back' : 'Say no'} danger />
        ) : null}
      </div>
    </Sheet>
  );
}

function saidWords(shares: boolean | null, isMine: boolean): string {
  if (shares === null) return isMine ? 'have said nothing' : 'has said nothing';
  return shares ? 'agreed' : 'said no';
}
