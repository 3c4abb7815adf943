import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { frostsWords } from '@/app/_ui/date-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { monthsOfSeason } from '@/app/_ui/year-strip-view';
import { cropGroupName, cropGroups } from '@/lib/domain/catalogue/crop-groups';
import { readCropDates } from '@/lib/usecases/dates/read-crop-dates';
import { DaysTable } from '../_parts/days-table';
import { SoilAndDays } from '../_parts/soil-and-days';
import { type StripLine, Strips } from '../_parts/strips';
import { WindowSources } from '../_parts/window-sources';

export const metadata: Metadata = { title: 'Dates of any crop' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ group?: string; soil?: string }> };

export default async function CropDatesPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { group: asked, soil } = await searchParams;
  const { crops, frosts, areFrostsOwn, group, season, today, units } = await ask(readCropDates, society, {
    group: asked ?? 'alliums',
  });
  const lines = crops
    .filter(({ ways }) => ways.length)
    .map(({ key, name, ways }): StripLine => ({ key, title: name, ways }));
  const unknown = crops.filter(({ ways }) => ways.length === 0);
  return (
    <>
      <PageHead title={`Dates of any crop, ${season}`} lead={frostsWords(frosts, areFrostsOwn)}>
        <Link className="button" href={`/${society}/dates`}>
          My own ground
        </Link>
      </PageHead>
      <nav className="seasons wide no-print" aria-label="Crop group">
        {cropGroups.map(({ key, name }) => (
          <Link key={key} href={`?group=${key}`} aria-current={key === group ? 'page' : undefined}>
            {name}
          </Link>
        ))}
        <Link href="?group=all" aria-current={group === null ? 'page' : undefined}>
          All
        </Link>
      </nav>
      {lines.length ? (
        <>
          {group ? (
            <Sheet title={cropGroupName(group)} wide flush>
              <Strips lines={lines} months={monthsOfSeason(season)} frosts={frosts} today={today} />
            </Sheet>
          ) : null}
          <Sheet title="In days" wide flush>
            <DaysTable caption={`Windows in days, ${season}`} lines={lines} />
          </Sheet>
          <section id="soil" className="wide">
            <Sheet title="Is the soil warm enough?" flush>
              <SoilAndDays crops={crops} typed={soil} units={units} keeps={{ group: group ?? 'all' }} />
            </Sheet>
          </section>
          <WindowSources lines={lines} />
        </>
      ) : (
        <Empty>No windows are known for the crops of this group.</Empty>
      )}
      {unknown.length ? (
        <Sheet title="No windows known" wide>
          <p>{unknown.map(({ name }) => name).join(', ')}: the society added them itself.</p>
        </Sheet>
      ) : null}
    </>
  );
}
