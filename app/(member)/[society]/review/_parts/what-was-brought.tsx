import { BarChart } from '@/app/_ui/bar-chart';
import { dayWords } from '@/app/_ui/delivery-words';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { LoadBand } from '@/lib/domain/review/load-bands';
import { bandWords, spreadWords } from './review-words';

type Loads = {
  readonly asked: number;
  readonly need: number;
  readonly share: number;
  readonly collected: number;
};

export type ReviewPart = {
  readonly unit: 'barrow' | 'bale';
  readonly total: Loads & { readonly heapLoads: number; readonly metInFull: number; readonly short: number };
  readonly deliveries: readonly (Loads & {
    readonly id: string;
    /** Left out where it isn't for the reader. */
    readonly name?: string;
    readonly material: string;
    readonly arrivesOn: CalendarDate | null;
    readonly heapLoads: number | null;
  })[];
  readonly bands: readonly LoadBand[] | null;
};

/** What was delivered for the season, barrows and bales by themselves; `under` is what stands below each. */
export function WhatWasBrought<Part extends ReviewPart>({
  parts,
  under,
}: {
  parts: readonly Part[];
  under?: (part: Part) => React.ReactNode;
}) {
  if (parts.length === 0)
    return (
      <Sheet title="Deliveries">
        <Empty>Nothing was delivered for this season.</Empty>
      </Sheet>
    );
  return parts.map((part) => (
    <OfOneKind key={part.unit} part={part}>
      {under?.(part)}
    </OfOneKind>
  ));
}

/** Each delivery of a kind, and how what came spread over holdings. */
function OfOneKind({ part, children }: { part: ReviewPart; children: React.ReactNode }) {
  const { unit, total, deliveries, bands } = part;
  const [what, one] = unit === 'bale' ? ['Bales', 'bales'] : ['Barrow-loads', 'barrow-loads'];
  const number = true;
  const cellsOf = (loads: Loads & { readonly heapLoads: number | null }) => [
    loads.heapLoads ?? '–',
    loads.asked,
    loads.need,
    loads.collected,
  ];
  return (
    <>
      <Sheet title={`${what} delivered`} flush>
        <Table
          caption={`${what} delivered and shared`}
          columns={[
            { head: 'delivery' },
            { head: 'in the heap', number },
            { head: 'asked', number },
            { head: 'needed', number },
            { head: 'collected', number },
          ]}
          rows={deliveries.map((delivery) => ({
            key: delivery.id,
            cells: [
              <span key="what">
                {delivery.name ?? delivery.material}
                {delivery.arrivesOn ? <span className="soft small"> {dayWords(delivery.arrivesOn)}</span> : null}
              </span>,
              ...cellsOf(delivery),
            ],
          }))}
          foot={['in all', ...cellsOf(total)]}
        />
        <p className="small soft sheet-body">
          {total.metInFull + total.short === 0
            ? 'Nothing is shared out yet.'
            : `Of ${total.metInFull + total.short} claims ${total.metInFull} were met in full and ${total.short} fell short.`}
        </p>
      </Sheet>
      <Sheet title={`${what} for each holding`}>
        {bands ? (
          <BarChart
            title={`How many holdings had so many ${one}`}
            says={spreadWords(bands)}
            unit="holdings"
            rows={bands.map((band) => ({ name: bandWords(band), value: band.holdings }))}
          />
        ) : (
          <p>There are fewer than three holdings, so that how much each had is not told.</p>
        )}
        {children}
      </Sheet>
    </>
  );
}
