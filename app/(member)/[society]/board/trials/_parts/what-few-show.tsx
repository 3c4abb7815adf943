import { Table } from '@/app/_ui/table';

type Props = { shows: readonly { plots: number; spreads: number }[] };

/** How far a mean difference must stand from nothing, for so many plots, in units of the spread that nobody knows yet. */
export function WhatFewShow({ shows }: Props) {
  return (
    <>
      <p>
        The difference between A and B is not the same on every plot. How far it spreads from plot to plot nobody knows
        beforehand; but a mean difference that is smaller than so many times that spread can’t be told from none:
      </p>
      <Table
        caption="Times the spread, by the number of plots"
        columns={[
          { head: 'plots', number: true },
          { head: 'times the spread', number: true },
        ]}
        rows={shows.map(({ plots, spreads }) => ({ key: String(plots), cells: [plots, spreads.toFixed(1)] }))}
      />
      <p className="small soft">
        If the differences of plots lie mostly within 1 kg of their mean (a spread of about 1 kg), three plots show no
        less than about {(shows[0]?.spreads ?? 0).toFixed(1)} kg; ten show{' '}
        {(shows.find(({ plots }) => plots === 10)?.spreads ?? 0).toFixed(1)} kg.
      </p>
    </>
  );
}
