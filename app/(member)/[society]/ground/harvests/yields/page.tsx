import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { sourceWords } from '@/app/_ui/setting-words';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { mixedYields } from '@/lib/domain/catalogue/published-yields';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { readYields } from '@/lib/usecases/harvest/read-yields';
import { CropYields } from '../_parts/crop-yields';

export const metadata: Metadata = { title: 'What the ground yielded' };

export default async function YieldsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { crops, units, onSeveralPlots } = await ask(readYields, society);
  return (
    <>
      <PageHead
        title="What the ground yielded"
        lead="Your own beds, season by season, from what you weighed or counted. Nobody but the holders of this ground sees it."
      >
        <Link className="button" href={`/${society}/ground/harvests`}>
          Log a harvest
        </Link>
        {crops.length ? (
          <a className="button" href={`/api/harvests/${society}`}>
            All harvests as CSV
          </a>
        ) : null}
      </PageHead>
      {crops.length === 0 ? (
        <Empty>
          Nothing is weighed or counted yet. Log a harvest, and what the bed gave on each square metre follows.
        </Empty>
      ) : null}
      {crops.map((crop) => (
        <CropYields key={crop.cropKey} crop={crop} units={units} withPlot={onSeveralPlots} />
      ))}
      {crops.length ? (
        <Sheet title="What these figures can and can’t say" wide>
          <MixedYields units={units} />
        </Sheet>
      ) : null}
    </>
  );
}

function MixedYields({ units }: { units: Units }) {
  return (
    <>
      <p className="small">
        A yield counts the ground of the plantings that something was logged from, paths left out. What was not weighed
        is not in it. One bed in one season says little: weather, seed and slugs differ from year to year.
      </p>
      <Reason ask="What is printed of ground with all crops together">
        <ul className="small">
          {mixedYields.map(({ name, gPerM2, source }) => (
            <li key={name}>
              {name}: {formatRate(gPerM2, units)} <span className="soft">({sourceWords(source)})</span>
            </li>
          ))}
        </ul>
      </Reason>
    </>
  );
}
