import 'server-only';
import { z } from 'zod';
import { plainPounds } from '@/lib/domain/ledger/pounds';
import { canEnter } from '@/lib/domain/policy/standing';
import type { Fared } from '@/lib/domain/season/season-account';
import type { SeasonCounts } from '@/lib/domain/season/season-counts';
import { loadMillionths } from '@/lib/domain/sharing/claim';
import { toCsv } from '@/lib/platform/csv';
import { query } from '../operation';
import { type SeasonPart, seasonPaper } from './season-paper';

const asked = z.object({ season: z.coerce.number().int().min(1901).max(2199).nullish().catch(null) });

/** After the season: loads, credits and money by delivery and by holding, for the annual meeting. */
export const readSeason = query({
  name: 'read-season',
  allow: canEnter,
  input: asked,
  read: (context, { season }) => seasonPaper(context, season ?? null),
});

/** The same as a table for any spreadsheet: by delivery, or by holding. */
export const readSeasonCsv = query({
  name: 'read-season-csv',
  allow: canEnter,
  input: asked.extend({ by: z.enum(['delivery', 'holding']).catch('delivery') }),
  read: async (context, { season, by }) => {
    const paper = await seasonPaper(context, season ?? null);
    const table = by === 'delivery' ? byDelivery(paper.parts) : byHolding(paper.parts, paper.withNames);
    return {
      name: `season-${paper.season}-by-${by}.csv`,
      text: toCsv(
        ['season', ...table.columns],
        table.rows.map((row) => [paper.season, ...row]),
      ),
    };
  },
});

type Counts = SeasonCounts & Fared;

const countColumns = ['asked', 'need', 'share', 'collected', 'beyond share', 'given up'];
const faredColumns = ['claims met in full', 'claims short', 'claims given up'];
const moneyColumns = ['charged GBP', 'paid GBP', 'outstanding GBP'];

function countsOf({ asked, need, share, collected, beyond, givenUp, metInFull, short, gaveUp, ...money }: Counts) {
  const pounds = [money.chargedMinor, money.paidMinor, money.outstandingMinor].map(plainPounds);
  return [asked, need, share, collected, beyond, givenUp, metInFull, short, gaveUp, ...pounds];
}

function byDelivery(parts: readonly SeasonPart[]) {
  const columns = ['delivery', 'material', 'comes', 'load', 'ordered', 'measured', 'left', 'price GBP'];
  const rows = parts.flatMap(({ unit, deliveries }) =>
    deliveries.map((one) => [
      ...[
        one.name,
        one.material,
        one.arrivesOn ?? '',
        unit,
        one.orderedLoads,
        one.heapLoads ?? '',
        one.leftLoads ?? '',
      ],
      ...[plainPounds(one.priceMinor), ...countsOf(one)],
    ]),
  );
  return { columns: [...columns, ...countColumns, ...faredColumns, ...moneyColumns], rows };
}

function byHolding(parts: readonly SeasonPart[], withNames: boolean) {
  const loads = (millionths: number) => (millionths / loadMillionths).toFixed(6);
  const materials = parts.flatMap(({ materials: own }) => own);
  const credits = materials.flatMap(({ name }) => [`${name}: credit at the start`, `${name}: credit at the end`]);
  const rows = parts.flatMap((part) =>
    part.holdings.map((one) => [
      ...[one.plots.join(', '), ...(withNames ? [one.names?.join(', ') ?? ''] : []), part.unit, ...countsOf(one)],
      ...materials.flatMap(({ key }) => {
        const credit = one.credits[part.materials.findIndex((own) => own.key === key)];
        return credit ? [loads(credit.startMillionths), loads(credit.endMillionths)] : ['', ''];
      }),
    ]),
  );
  const columns = ['plots', ...(withNames ? ['holders'] : []), 'load', ...countColumns, ...faredColumns];
  return { columns: [...columns, ...moneyColumns, ...credits], rows };
}
