import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Mark } from '@/app/_ui/mark';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { enoughMark, enoughWords, rangeWords } from '@/app/_ui/store-words';
import { readLasts } from '@/lib/usecases/store/read-lasts';
import { HowItIsReckoned } from '../_parts/how-it-is-reckoned';
import { SayUse } from '../_parts/say-use';

export const metadata: Metadata = { title: 'Will it last?' };

type Read = Awaited<ReturnType<typeof readLasts.run>>;

export default async function LastsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { kinds, holdings } = await ask(readLasts, society);
  return (
    <>
      <PageHead
        title="Will it last?"
        lead="When each kind runs out, as far as that can be said, and whether it is enough till the new crop."
      >
        <Link className="button" href={`/${society}/store`}>
          Back to the store
        </Link>
      </PageHead>
      <div className="stack">
        {kinds.length === 0 ? (
          <Empty>
            Nothing was put in this winter. <Link href={`/${society}/store`}>Put a lot in</Link>, and its answer stands
            here.
          </Empty>
        ) : null}
        {kinds.map((kind) => (
          <Kind
            key={`${kind.holdingId} ${kind.keepingKey}`}
            society={society}
            kind={kind}
            plots={plotsOf(holdings, kind)}
          />
        ))}
      </div>
      <HowItIsReckoned />
    </>
  );
}

type KindRead = Read['kinds'][number];

// Whose it is, where somebody has several holdings.
function plotsOf(holdings: Read['holdings'], { holdingId }: KindRead): string {
  if (holdings.length < 2) return '';
  return `, plot ${holdings.find(({ id }) => id === holdingId)?.plots.join(', ') ?? ''}`;
}

function Kind({ society, kind, plots }: { society: string; kind: KindRead; plots: string }) {
  const { holdingId, keepingKey, name, runsOut, enough, newCropOn, said, lots } = kind;
  const address = `/${society}/store/kinds/${keepingKey}?holding=${holdingId}`;
  const mark = enough && enoughMark[enough.answer];
  return (
    <Sheet
      title={<Link href={address}>{`${name}${plots}`}</Link>}
      aside={mark ? <Mark kind={mark.kind}>{mark.word}</Mark> : null}
    >
      {lots === 0 ? (
        <p>Used up.</p>
      ) : runsOut ? (
        <p>Runs out {rangeWords(runsOut)}.</p>
      ) : (
        <p>When it runs out can’t be told: say how many you use a week, or go over it once.</p>
      )}
      {enough && newCropOn ? (
        <p>
          Till the new crop, {dayWords(newCropOn)}: {enoughWords(enough)}
        </p>
      ) : (
        <p className="soft">Say when you look for the new crop, and whether it is enough stands here.</p>
      )}
      <Reason ask={said?.tenthsPerWeek ? 'What you use, and when the new crop comes' : 'Say what you use a week'}>
        <SayUse society={society} kind={kind} />
      </Reason>
    </Sheet>
  );
}
