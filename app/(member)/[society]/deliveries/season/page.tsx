import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { readSeason } from '@/lib/usecases/season/read-season';
import { BroughtIn } from './_parts/brought-in';
import { HadByHolding } from './_parts/had-by-holding';
import { HowClaimsFared } from './_parts/how-claims-fared';
import { MoneyOfSeason } from './_parts/money-of-season';

export const metadata: Metadata = { title: 'After the season' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string }> };

export default async function SeasonPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked } = await searchParams;
  const read = await ask(readSeason, society, { season: asked ?? null });
  const { season, seasons, days, parts, calledOff, withNames } = read;
  const file = (by: string) => `/api/season/${society}?season=${season}&by=${by}`;
  return (
    <div className="season-paper wide">
      <PageHead
        title={`${read.society}: loads, credits and money, season ${season}`}
        lead={`Deliveries from ${dayWords(days.from)} to ${dayWords(addDays(days.until, -1))}, which serve the season ${season}. As it stood on ${dayWords(read.today)}; by plot${withNames ? '' : ', and no names'}.`}
      >
        <PrintButton>Print on A4</PrintButton>
        <a className="button" href={file('delivery')}>
          By delivery, as CSV
        </a>
        <a className="button" href={file('holding')}>
          By holding, as CSV
        </a>
      </PageHead>
      {seasons.length > 1 ? <SeasonSwitch seasons={seasons.slice(0, 8)} season={season} thisYear={season} /> : null}
      {read.isCommittee ? <WhoReads byCommitteeOnly={read.byCommitteeOnly} withNames={withNames} /> : null}
      {parts.length === 0 ? (
        <Empty>Nothing was delivered for this season. Choose another above, or plan a delivery.</Empty>
      ) : null}
      {parts.map((part) => (
        <section key={part.unit} aria-label={part.unit === 'bale' ? 'Bales' : 'Barrow-loads'}>
          <Sheet title={part.unit === 'bale' ? 'Bales, by delivery' : 'Barrow-loads, by delivery'} flush wide>
            <BroughtIn part={part} />
          </Sheet>
          <Sheet title="How claims were met" flush wide>
            <HowClaimsFared part={part} />
          </Sheet>
          <Sheet title="Money, by delivery" flush wide>
            <MoneyOfSeason part={part} />
          </Sheet>
          <Sheet title="By holding" flush wide>
            <HadByHolding part={part} withNames={withNames} />
          </Sheet>
        </section>
      ))}
      {calledOff.length ? <p className="small soft">Called off, and in no sum: {calledOff.join(', ')}.</p> : null}
      <p className="small soft">
        Asked: when booking closed. Left: measured and not collected. Payments go to the oldest charges first. Credit is
        in loads; the credits of a material always sum to nothing.
      </p>
    </div>
  );
}

function WhoReads({ byCommitteeOnly, withNames }: { byCommitteeOnly: boolean; withNames: boolean }) {
  return (
    <p className="no-print small">
      {byCommitteeOnly ? 'The committee alone reads this page' : 'Every member reads this page'},{' '}
      {withNames ? 'with the names of holders' : 'by plot numbers and no names'}. Both are among the society’s rules.
    </p>
  );
}
