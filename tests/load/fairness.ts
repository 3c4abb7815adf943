import fs from 'node:fs';
import type { Chance } from '../../seeds/chance';
import { creditRun, deliveries, holdings, type Season, type Spread } from './credit-run';
import { type CreditRun, fairnessChart } from './fairness-chart';
import { figure, type Section, section } from './table';

const shown = [1, 2, 5, 10, 20, 50, 100];

// Six in ten ask; of those four in ten have no ground due; one in five asks for less than the need.
function randomly(chance: Chance) {
  if (chance.next() >= 0.6) return null;
  const need = chance.next() < 0.4 ? 0 : chance.whole(1, 12);
  const asked = chance.next() < 0.2 ? chance.whole(1, Math.max(1, need)) : need + chance.whole(need ? 0 : 1, 4);
  return { asked, need };
}

const seasons: readonly Season[] = [
  {
    title: 'The same holdings every time, lorry loads',
    heapLoads: (chance) => chance.whole(100, 300),
    asks: () => ({ asked: 20, need: 20 }),
    boundLoads: 1,
  },
  {
    title: 'Random needs, lorry loads',
    heapLoads: (chance) => chance.whole(100, 300),
    asks: randomly,
    boundLoads: (holdings - 1) / 2,
  },
  {
    title: 'Random needs, small trailers',
    heapLoads: (chance) => chance.whole(6, 24),
    asks: randomly,
    boundLoads: (holdings - 1) / 2,
  },
];

type Found = { readonly season: Season; readonly first: readonly Spread[]; readonly worstOfAll: number };

/**
 * Credits of a society over many deliveries. The seeds are fixed, so it comes out the same on every machine.
 *
 * @param runs    each by another seed: the first is told delivery by delivery, the worst is looked for in all
 * @param isKept  whether docs/fairness.md and its chart are written
 */
export function measureFairness(runs: number, isKept: boolean): Section {
  const found = seasons.map((season): Found => {
    const all = Array.from({ length: runs }, (_, at) => creditRun(season, at + 1));
    const worstOfAll = Math.max(...all.flat().map(({ worst }) => worst));
    return { season, first: all[0] ?? [], worstOfAll };
  });
  if (isKept) {
    fs.writeFileSync('docs/pictures/fairness.svg', fairnessChart(found.map(drawn)));
    fs.writeFileSync('docs/fairness.md', report(found, runs));
  }
  return overview(found, runs);
}

function drawn({ season, first }: Found): CreditRun {
  const words = season.boundLoads === 1 ? 'bound: one load' : `bound: (n − 1)/2, ${figure(season.boundLoads, 1)} loads`;
  return {
    title: season.title,
    lines: [
      { name: 'worst', loads: first.map(({ worst }) => worst) },
      { name: '99th percentile', loads: first.map(({ ninetyNinth }) => ninetyNinth) },
      { name: 'median', loads: first.map(({ median }) => median) },
    ],
    bound: { words, loads: season.boundLoads },
  };
}

function overview(found: readonly Found[], runs: number): Section {
  return {
    title: `Fairness over time: ${deliveries} deliveries between ${holdings} holdings`,
    notes: ['Credits in loads, of either sign. By delivery, and with the bounds: [fairness.md](fairness.md).'],
    heads: [
      '',
      'median at the end',
      '99th percentile at the end',
      'worst of all deliveries',
      `worst of ${runs} runs`,
      'bound',
    ],
    rows: found.map(({ season, first, worstOfAll }) => [
      season.title,
      loads(first.at(-1)?.median),
      loads(first.at(-1)?.ninetyNinth),
      loads(Math.max(...first.map(({ worst }) => worst))),
      loads(worstOfAll),
      figure(season.boundLoads, 1),
    ]),
  };
}

function report(found: readonly Found[], runs: number): string {
  const byDelivery = found.map(({ season, first }) =>
    section({
      title: season.title,
      heads: ['after delivery', 'median', '99th percentile', 'worst'],
      rows: shown.flatMap((delivery) => {
        const spread = first[delivery - 1];
        return spread ? [[String(delivery), loads(spread.median), loads(spread.ninetyNinth), loads(spread.worst)]] : [];
      }),
    }).replace('## ', '### '),
  );
  return `# Fairness over time

Written by \`npm run bench\`. ${deliveries} deliveries are shared out between ${holdings} holdings, one after the other, by the share-out and the
settlement of the service; everybody collects their share. The seeds are fixed, so it comes out the same on every machine.

A credit is what a holding was due and has not had, or, below nothing, has had beyond its due. Here its size is shown, of either sign,
in loads.

![Credits after each delivery: the worst, the 99th percentile and the median, for three ways in which loads come and are asked for](pictures/fairness.svg)

${section({ ...overview(found, runs), title: `After ${deliveries} deliveries`, notes: [] })}
- *The same holdings every time*: each asks every time for 20 loads that it needs, of heaps of 100 to 300.
- *Random needs*: of each delivery six holdings in ten ask; four in ten of those have no ground due, the others need 1 to 12 loads;
  most ask for their need and up to 4 loads more, one in five for less. *Lorry loads* are heaps of 100 to 300 loads, *small trailers*
  of 6 to 24.

## The bounds

Let n holdings have credits that sum to zero, and let the heap end with r loads for m contenders: each of them gains r/m, and the r
with the highest credits lose 1.

- **The same holdings contend every time: under one load.** All gain alike, so only the loads given matter. Who is given one had at
  least the credit of who is not, and has at most one load less of it afterwards: the highest and the lowest are never more than one
  load apart. As they sum to zero, the highest is at most (n − 1)/n of a load, and so is the lowest.
- **Whoever contends: at most (n − 1)/2 loads.** The k highest credits never sum to more than k(n − k)/2. Suppose that they did for
  some k after a delivery, and not before. For each such k the sum has grown, so one of the k went without while one outside them was
  given a load; who was given it had at least as much before, and has at most one load less now. So the k-th and the next credit are
  at most one load apart. The steps of k(n − k)/2 fall by exactly one load each, those of the sums by no more where they lie above it:
  the excess is convex there, and nothing at k = 0 and k = n, so it cannot lie above nothing between them. With k = 1 and k = n − 1,
  the highest credit and the lowest are at most (n − 1)/2 loads.

Credits are kept in whole millionths: those that do not divide are due to the first in the lot, which may move the first bound by one
millionth for each delivery, and the second by n − 1. Where contenders change, no whole-load rule can promise to stay under one load: two
pairs, then their losers, leave one holding owed a whole load. So the largest credit of a society is shown in the service, not hidden.

Who books after closing has no part in any of this: such claims come behind all others, in the order in which they came, and what they
are given is all that they were due. They change no share of those in time and no credit ([decision 10](decisions/0010-late-claims-come-last.md)).

## Working a share-out out again

Every member may do it: by hand from the printed queue, by the button “Work it out again” on the queue's page, which runs the service's own
rule in the reader's browser, or with a program of their own from \`/api/queue/<society>/<delivery>\`, a JSON file that is there once the
lot is revealed:

- \`inputs\`: what the result rests on: \`commitment\` (published before booking) and \`bytesHex\`; \`loads\` in the heap; \`frozen\`, the
  bookings as closing froze them; \`claims\`, as they stand now, with \`collected\`, and with \`late\` for who came after closing;
- \`shown\`: for each claim its plots, share, due and credit afterwards, as the page shows them; \`method\` and its version; \`provisional\`
  until the secretary has confirmed it.

Claims go by the ids of their bookings; loads are whole; what is due and credits are in millionths of a load. There are no names in it.

## By delivery

${byDelivery.join('\n')}`;
}

function loads(value: number | undefined): string {
  return figure(value ?? 0, 2);
}
