import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { ReckonAs } from '@/app/_ui/reckon-as';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import { formatMass } from '@/lib/domain/quantity/load';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { readSiteNeed } from '@/lib/usecases/ground/read-site-need';
import { ByHolding } from './_parts/by-holding';
import { Coming } from './_parts/coming';
import { OnOrder } from './_parts/on-order';
import { strewnWords } from './_parts/strewn-words';

export const metadata: Metadata = { title: 'What the ground asks for' };

type Search = { site?: string; season?: string; material?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function NeedPage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = await searchParams;
  const read = await ask(readSiteNeed, society, {
    siteId: search.site || null,
    season: search.season ?? null,
    materialKey: search.material ?? null,
  });
  if (!read.site)
    return (
      <>
        <PageHead title="What the ground asks for" />
        <Empty>There is no site yet. Add it, and its plots, first.</Empty>
      </>
    );
  const { site, sites, season, seasons, units, dressing, barrowLoadG, materials, holdings, years, deliveries } = read;
  const [first = 0] = seasons;
  const year = years.find((one) => one.season === season);
  const query = { site: site.id, material: dressing.materialKey };
  return (
    <>
      <PageHead
        title="What the ground asks for"
        lead={`${site.name}: manure as each holding would book it; straw and meals by the society’s recipes. Plot numbers, no names.`}
      >
        <ReckonAs season={season} site={site} sites={sites} materialKey={dressing.materialKey} materials={materials} />
      </PageHead>
      {year ? (
        <Sheet
          title={`${year.loads.toLocaleString('en-GB')} barrow-loads for ${season}`}
          aside={<SeasonSwitch seasons={seasons} season={season} thisYear={first} query={query} />}
        >
          <p>
            {formatMassIn(year.massG, units)} of manure, to be dug in from autumn {season - 1} to spring {season}:{' '}
            {formatArea(year.dueCm2, units)} due its turn
            {year.unloggedCm2
              ? `, and a ${ordinal(dressing.intervalYears)} of ${formatArea(year.unloggedCm2, units)} without a record, “assumed” (${formatMassIn(year.assumedG, units)} of it)`
              : ''}
            {year.skippedCm2
              ? `; ${formatArea(year.skippedCm2, units)} is skipped, because the crop planned there takes none`
              : ''}
            .
          </p>
          {year.strewn.length ? (
            <p>By the recipes of what is planned: {strewnWords(year.strewn, units)}.</p>
          ) : (
            <p className="soft">By the recipes of what is planned: no straw and no meal.</p>
          )}
          <Reason ask={`Why ${year.loads.toLocaleString('en-GB')}?`}>
            <p className="small">
              Due ground × {formatRate(dressing.rateGPerM2, units)} ÷ {formatMass(barrowLoadG)} a barrow-load (
              {dressing.barrowLitres} L at {dressing.densityGPerL} g a litre), rounded up once for each holding, and
              then added: a load begun is a load. With heavier manure there are fewer loads of the same weight.
            </p>
            <p className="small">
              Straw and meals are reckoned on ground with a crop planned for {season}, less what has had them already;
              lime is not, since only a soil test says how much.{' '}
              {read.toLet
                ? `${read.toLet === 1 ? 'One plot is' : `${read.toLet} plots are`} to let and not counted.`
                : ''}
            </p>
          </Reason>
        </Sheet>
      ) : null}
      <OnOrder
        society={society}
        deliveries={deliveries}
        needG={years[0]?.massG ?? 0}
        barrowLoadG={barrowLoadG}
        season={first}
        units={units}
        plans={read.plans}
      />
      <Coming years={years} units={units} intervalYears={dressing.intervalYears} />
      <ByHolding holdings={holdings} season={season} units={units} />
    </>
  );
}

function ordinal(years: number): string {
  const words = ['whole', 'half', 'third', 'quarter', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
  return words[years - 1] ?? `${years}th`;
}
