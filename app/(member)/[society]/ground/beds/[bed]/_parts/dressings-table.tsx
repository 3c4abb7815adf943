import { dayWords } from '@/app/_ui/delivery-words';
import { nutrientFigure, rangeFigure } from '@/app/_ui/nutrient-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { type Nutrient, nutrients } from '@/lib/domain/catalogue/nutrient-contents';
import type { AvailableShare } from '@/lib/domain/nutrients/first-year';
import { type Amount, contentsOf, type SupplyReason } from '@/lib/domain/nutrients/supply';
import { percent } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import type { Feeding } from './feeding';
import { workName } from './work-names';

type Dressing = Feeding['dressings'][number];
type Props = { dressings: readonly Dressing[]; units: Units; bedCm2: number; season: number };

const nutrientNames: Readonly<Record<Nutrient, string>> = {
  nitrogen: 'nitrogen (N)',
  phosphate: 'phosphate (P₂O₅)',
  potash: 'potash (K₂O)',
  magnesia: 'magnesia (MgO)',
};

/** What each dressing of the last twelve months brought. */
export function DressingsTable({ dressings, units, bedCm2, season }: Props) {
  const figure = (amount: Amount | null | undefined) => (amount ? nutrientFigure(amount.mgPerM2, units) : 'not known');
  return (
    <Table
      caption="What the dressings of the last twelve months supply"
      columns={[
        { head: 'dressing' },
        { head: 'N in all', number: true },
        { head: 'N, first year', number: true },
        { head: 'P₂O₅', number: true },
        { head: 'K₂O', number: true },
        { head: 'MgO', number: true },
      ]}
      rows={dressings.map((one) => ({
        key: one.work.id,
        cells: [
          <div key="what" style={{ minWidth: '11rem' }}>
            {nameOf(one)}
            {one.rateGPerM2 ? `, ${formatRate(one.rateGPerM2, units)}` : ''} on {percent(one.shareCm2, bedCm2)}
            <div className="small soft">
              {one.work.doneOn ? dayWords(one.on) : 'day not recorded'}, for {one.work.season}
              {one.work.season < season ? ': a tenth of its nitrogen counts yet' : ''}
            </div>
          </div>,
          figure(one.supply?.nitrogen),
          one.supply?.firstYear ? rangeFigure(one.supply.firstYear, units) : 'not known',
          figure(one.supply?.phosphate),
          figure(one.supply?.potash),
          figure(one.supply?.magnesia),
        ],
      }))}
    />
  );
}

/** Where the figures of each dressing come from; those that were alike stand once. */
export function DressingsWhy({ dressings, units }: Pick<Props, 'dressings' | 'units'>) {
  const alike = new Map(dressings.map((one) => [JSON.stringify([one.work.materialKey, one.supply, one.reasons]), one]));
  return [...alike.values()].map((dressing) => (
    <Reason
      key={dressing.work.id}
      ask={`Why, ${nameOf(dressing)}${dressing.rateGPerM2 ? ` at ${formatRate(dressing.rateGPerM2, units)}` : ''}?`}
    >
      <Why dressing={dressing} units={units} />
    </Reason>
  ));
}

function nameOf({ work }: Dressing): string {
  return workName('manured', work.materialKey);
}

function Why({ dressing, units }: { dressing: Dressing; units: Units }) {
  const { supply, reasons, work } = dressing;
  const { materialKey } = work;
  return (
    <ul className="small">
      {reasons.map((reason) => (
        <li key={reason}>{recordWords[reason]}</li>
      ))}
      {supply && materialKey
        ? nutrients.map((nutrient) => (
            <li key={nutrient}>{contentWords(nutrient, materialKey, supply[nutrient], units)}</li>
          ))
        : null}
      {supply?.firstYear?.shares.map((share) => (
        <li key={share.kind}>{shareWords(share)}</li>
      ))}
      {supply?.reasons.map((reason) => {
        const words = supplyWords(reason);
        return words ? <li key={JSON.stringify(reason)}>{words}</li> : null;
      })}
    </ul>
  );
}

const recordWords: Readonly<Record<Dressing['reasons'][number], string>> = {
  'amount-not-known': 'How much was put on is not recorded, so what it brought is not known.',
  'material-not-known': 'What was put on is not recorded, so what it brought is not known.',
  'day-assumed': 'Its day is not recorded; it is taken as of 1 November before its season.',
  'age-assumed': 'Its age is not recorded; it is taken as stored for three months or longer.',
};

function contentWords(nutrient: Nutrient, materialKey: string, amount: Amount | null, units: Units): string {
  const content = contentsOf(materialKey)[nutrient];
  const name = nutrientNames[nutrient].replace(/^./, (first) => first.toUpperCase());
  if (!content || !amount) return `${name}: no figure was found, so it is not known.`;
  const others = content.otherwise.map(({ gPerT, source }) => `${perTonne(gPerT)} (${sourceWords(source)})`);
  const range = amount.leastMgPerM2 < amount.mostMgPerM2 ? `; by all of them ${rangeFigure(amount, units)}` : '';
  return `${name}: ${perTonne(content.gPerT)} in a tonne (${sourceWords(content.source)})${others.length ? `; others say ${others.join(', ')}` : ''}${range}.`;
}

function perTonne(gPerT: number): string {
  return `${(gPerT / 1000).toLocaleString('en-GB', { maximumFractionDigits: 1 })} kg`;
}

function shareWords({ kind, leastPercent, mostPercent, days, source }: AvailableShare): string {
  const share = leastPercent === mostPercent ? `${leastPercent} %` : `${leastPercent} to ${mostPercent} %`;
  const from = `(${sourceWords(source)})`;
  if (kind === 'next-crop') return `Of the nitrogen the next crop can use ${share} ${from}.`;
  if (kind === 'counted-at-least')
    return `German law counts ${share} of the nitrogen at the least in the first year ${from}.`;
  return `Of the nitrogen ${share} comes free ${days === null ? 'in the first year' : `in ${days} days`} ${from}.`;
}

// What the figures themselves tell already has no words of its own.
function supplyWords(reason: SupplyReason): string | null {
  if (reason.code === 'availability-not-known')
    return 'How much of its nitrogen comes free in the first year is not known.';
  if (reason.code === 'rain-assumed')
    return 'With 450 mm of rain after autumn, or 250 mm after winter, to the end of March.';
  if (reason.code === 'summer-is-for-grass') return 'For summer the table speaks of grass.';
  if (reason.code === 'summer-not-in-table') return 'For manure dug in in summer the table has no figure.';
  return null;
}
