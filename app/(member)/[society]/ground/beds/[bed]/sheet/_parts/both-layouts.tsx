import Link from 'next/link';
import { Reason } from '@/app/_ui/sheet';
import { layoutReasons, spanWords } from '@/app/_ui/sheet-words';
import { Table } from '@/app/_ui/table';
import type { Units } from '@/lib/domain/quantity/length';
import type { Carrying, LessCarrying } from '@/lib/domain/trench/carrying';
import type { TrenchLayout } from '@/lib/domain/trench/trench-plan';
import type { SheetAnswer } from '@/lib/usecases/sheets/preview-sheet';
import { type Asked, askWith } from './asked';

const names: Readonly<Record<TrenchLayout, string>> = {
  'two-halves': 'along and back, in two halves',
  'straight-through': 'straight through',
};

type Props = { answer: SheetAnswer; carrying: LessCarrying; asked: Asked; units: Units };

/** Both layouts of the trade, what each asks to be carried, and one tap to take the other. */
export function BothLayouts({ answer, carrying, asked }: Props) {
  const { order, figures } = answer;
  const { less, straightThrough, twoHalves } = carrying;
  const row = (one: Carrying) => ({
    key: one.layout,
    mine: one.layout === order.layout,
    cells: [
      <>
        {one.layout === 'two-halves' ? 'two halves' : 'straight through'}
        {one.layout === less ? <strong> · less</strong> : null}
      </>,
      carriedWords(one),
      one.layout === order.layout ? 'taken' : <Link href={askWith(asked, { layout: one.layout })}>Take it</Link>,
    ],
  });
  return (
    <section>
      <h3>{names[order.layout].charAt(0).toUpperCase() + names[order.layout].slice(1)}</h3>
      <p>Why: {layoutReasons[order.layoutBy]}.</p>
      <Table
        caption="Both layouts"
        columns={[{ head: 'layout' }, { head: 'carried', number: true }, { head: '' }]}
        rows={[row(straightThrough), row(twoHalves)]}
      />
      <Reason ask="What is carried?">
        <p className="small">
          The first trench’s soil, which fills the last one, and what is turned across where the second half begins: its
          weight × its way, in metre-kilograms. Every other spit goes one trench back, in both alike, and is not
          counted. A metre-kilogram is a kilogram carried one metre.{' '}
          {figures.leafletLayout
            ? `The Ministry’s wartime leaflet would have it ${names[figures.leafletLayout]}: it parts only ground wider than 15 ft.`
            : ''}
        </p>
      </Reason>
    </section>
  );
}

function carriedWords({ carriedMetreKg, carriedLitreMetres }: Carrying): string {
  if (!carriedMetreKg) return `${Math.round(carriedLitreMetres).toLocaleString('en-GB')} litre-metres`;
  return `${spanWords(carriedMetreKg, (value) => value.toLocaleString('en-GB'))} m·kg`;
}
