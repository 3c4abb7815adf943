import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { frostsWords } from '@/app/_ui/date-words';
import { dayWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { monthsAround } from '@/app/_ui/year-strip-view';
import { type DatesLine, readDates } from '@/lib/usecases/dates/read-dates';
import { DaysTable } from './_parts/days-table';
import { InTheWay } from './_parts/in-the-way';
import { InWindow } from './_parts/in-window';
import { SoilAndDays } from './_parts/soil-and-days';
import { Standing } from './_parts/standing';
import { type StripLine, Strips } from './_parts/strips';

export const metadata: Metadata = { title: 'Dates' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ soil?: string; holding?: string }> };

export default async function DatesPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { soil, holding } = await searchParams;
  const { lines, conflicts, frosts, areFrostsOwn, today, units, plots } = await ask(readDates, society, {
    holdingId: holding || null,
  });
  const now = lines.filter(({ steps }) => steps.some(({ state }) => state.code === 'open'));
  const later = lines.filter((line) => line.steps.length > 0 && !now.includes(line));
  const standing = lines.filter(({ steps, ways, isToCome }) => steps.length === 0 && ways.length > 0 && !isToCome);
  const unknown = lines.filter(({ ways }) => ways.length === 0);
  const strips = lines.map(stripOf).filter(({ ways }) => ways.some(({ windows }) => windows.length));
  return (
    <>
      <PageHead
        title="When to sow, plant and clear"
        lead={`${plots.length ? `Plot ${plots.join(' and ')}, ` : ''}${dayWords(today)}. ${frostsWords(frosts, areFrostsOwn)}`}
      >
        <Link className="button" href={`/${society}/dates/crops`}>
          Look up any crop
        </Link>
        <Link className="button" href={`/${society}/office/settings`}>
          The society’s frosts
        </Link>
        <PrintButton>Print</PrintButton>
      </PageHead>
      {lines.length === 0 ? <Nothing society={society} holds={plots.length > 0} /> : null}
      {conflicts.length ? (
        <Sheet title="In the way" wide flush>
          <InTheWay society={society} conflicts={conflicts} today={today} />
        </Sheet>
      ) : null}
      {now.length ? (
        <Sheet title="In window now" wide flush>
          <InWindow society={society} lines={now} today={today} />
        </Sheet>
      ) : null}
      {strips.length ? (
        <Sheet title="The months ahead" wide flush>
          <Strips lines={strips} months={monthsAround(today)} frosts={frosts} today={today} />
        </Sheet>
      ) : null}
      {later.length ? (
        <Sheet title="To come" wide flush>
          <InWindow society={society} lines={later} today={today} />
        </Sheet>
      ) : null}
      {standing.length ? (
        <Sheet title="Standing" wide flush>
          <Standing society={society} lines={standing} today={today} />
        </Sheet>
      ) : null}
      {strips.length ? (
        <Sheet title="In days" wide flush>
          <DaysTable caption="Windows in days" lines={strips} />
        </Sheet>
      ) : null}
      {unknown.length ? (
        <Sheet title="No windows known" wide>
          <p>
            {[...new Set(unknown.map(({ cropName }) => cropName))].join(', ')}: settle the crop on its bed, and its
            windows stand here. For crops that the society added itself none are known.
          </p>
        </Sheet>
      ) : null}
      {strips.length ? (
        <section id="soil" className="wide">
          <Sheet title="Is the soil warm enough?" flush>
            <SoilAndDays crops={cropsOf(lines)} typed={soil} units={units} keeps={holding ? { holding } : {}} />
          </Sheet>
        </section>
      ) : null}
    </>
  );
}

function Nothing({ society, holds }: { society: string; holds: boolean }) {
  return (
    <div className="wide">
      <Empty>
        {holds ? (
          <>
            Nothing is planned or standing on your ground. <Link href={`/${society}/ground`}>Plan a bed</Link>, and its
            dates stand here; or <Link href={`/${society}/dates/crops`}>look up any crop</Link>.
          </>
        ) : (
          <>
            You hold no plot at present. <Link href={`/${society}/dates/crops`}>Look up any crop</Link> all the same.
          </>
        )}
      </Empty>
    </div>
  );
}

// Of what stands only its clearing is to come.
function stripOf({ key, cropName, season, plantings, steps, ...line }: DatesLine): StripLine {
  const ways = steps.length
    ? line.ways
    : line.ways.map((way) => ({ ...way, windows: way.windows.filter(({ step }) => step === 'clear') }));
  const where = plantings.map(({ plotNumber, bedName }) => `plot ${plotNumber}, bed ${bedName}`).join('; ');
  return { key, title: `${cropName}, ${season}`, where, ways };
}

function cropsOf(lines: readonly DatesLine[]) {
  return [...new Map(lines.filter(({ isToCome }) => isToCome).map(({ cropKey, cropName }) => [cropKey, cropName]))].map(
    ([key, name]) => ({ key, name }),
  );
}
