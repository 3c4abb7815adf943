import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Mark } from '@/app/_ui/mark';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { StoreCaution } from '@/app/_ui/store-caution';
import { amountWords, enoughMark, enoughWords, lotName, rangeWords, firstReasonWords } from '@/app/_ui/store-words';
import { readKind } from '@/lib/usecases/store/read-kind';
import { HowItIsReckoned } from '../../_parts/how-it-is-reckoned';
import { LeftChart } from '../../_parts/left-chart';
import { LeftTable } from '../../_parts/left-table';
import { SayUse } from '../../_parts/say-use';
import { WantedGround } from '../../_parts/wanted-ground';

export const metadata: Metadata = { title: 'Will it last?' };

type Props = { params: Promise<{ society: string; keeping: string }>; searchParams: Promise<{ holding?: string }> };

export default async function KindPage({ params, searchParams }: Props) {
  const { society, keeping: keepingKey } = await params;
  const { holding } = await searchParams;
  const read = await ask(readKind, society, { holdingId: holding || null, keepingKey });
  const { forecast, name, units } = read;
  return (
    <>
      <PageHead title={`${name}: will it last?`} lead={forecast ? undefined : 'None was put in this winter.'}>
        <Link className="button" href={`/${society}/store/lasts`}>
          All kinds
        </Link>
        <Link className="button" href={`/${society}/store`}>
          Back to the store
        </Link>
      </PageHead>
      {forecast ? (
        <>
          <div className="stack">
            <Answer forecast={forecast} />
            {forecast.runsOut && forecast.lots.length ? (
              <Sheet title="How likely any is left">
                <LeftChart forecast={forecast} today={read.today} />
                <LeftTable forecast={forecast} />
              </Sheet>
            ) : null}
            <WantedGround society={society} read={read} />
          </div>
          <div className="stack">
            <Sheet title="What you use">
              {forecast.piecesPerWeek ? <p>{usedWords(forecast)}</p> : null}
              <SayUse society={society} kind={forecast} />
            </Sheet>
            <Sheet title="Its lots, first to use first">
              {forecast.lots.length === 0 ? <p>All used up.</p> : null}
              <ol>
                {forecast.lots.map((lot) => (
                  <li key={lot.id}>
                    <Link href={`/${society}/store/lots/${lot.id}`}>{lotName(lot)}</Link>:{' '}
                    {amountWords(lot.now.sound, lot.measure, units)} in {lot.place.name}
                    <br />
                    <span className="small">
                      To be used {rangeWords(lot.useBy)}.{lot.reasons.map((reason) => ` ${firstReasonWords(reason)}.`)}
                    </span>
                  </li>
                ))}
              </ol>
            </Sheet>
            <HowItIsReckoned />
            <StoreCaution keepingKeys={[keepingKey]} />
          </div>
        </>
      ) : (
        <div className="wide">
          <Empty>
            None was put in since the first of July. <Link href={`/${society}/store/lots/new`}>Put a lot in</Link>, and
            its answer stands here.
          </Empty>
        </div>
      )}
    </>
  );
}

type Forecast = NonNullable<Awaited<ReturnType<typeof readKind.run>>['forecast']>;

function Answer({ forecast: { runsOut, enough, newCropOn, lots } }: { forecast: Forecast }) {
  const mark = enough && enoughMark[enough.answer];
  return (
    <Sheet title="Enough till the new crop?" aside={mark ? <Mark kind={mark.kind}>{mark.word}</Mark> : null}>
      <p className="answer">
        {lots.length === 0
          ? 'It is used up.'
          : runsOut
            ? `It runs out ${rangeWords(runsOut)}.`
            : 'When it runs out can’t be told yet: say how many you use a week, or go over it once.'}
      </p>
      {enough && newCropOn ? (
        <p>
          The new crop is looked for on {dayWords(newCropOn)}. {enoughWords(enough)}
        </p>
      ) : (
        <p>Say when you look for the new crop, and the answer stands here.</p>
      )}
    </Sheet>
  );
}

function usedWords({ piecesPerWeek, said, isSeen }: Forecast): string {
  const rounded = Math.round((piecesPerWeek ?? 0) * 10) / 10;
  const from =
    said?.tenthsPerWeek && isSeen
      ? 'by what you said and what your goings over show'
      : isSeen
        ? 'by your goings over'
        : 'by what you said';
  return `About ${rounded} a week, ${from}.`;
}
