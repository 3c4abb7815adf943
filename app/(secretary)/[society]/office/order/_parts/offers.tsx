import Link from 'next/link';
import { Empty, Reason, Sheet } from '@/app/_ui/sheet';
import { costWords, poundsWords, thanksWords, unitsWords, unitWord } from '@/app/_ui/supplier-words';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { massBetween, type Offer, type Order } from './order-words';

/** The same in each supplier's own units, each with its reason, and one way to plan it. */
export function Offers({ society, read }: { society: string; read: Order }) {
  const { offers, isStraw, season } = read;
  return (
    <Sheet
      title={`For ${season}, in the suppliers’ own loads`}
      flush
      aside={<Link href={`/${society}/office/suppliers`}>Suppliers</Link>}
    >
      {offers.length === 0 ? (
        <div className="sheet-body">
          <Empty>
            No supplier brings {isStraw ? 'straw' : 'manure'} yet.{' '}
            <Link href={`/${society}/office/suppliers`}>Add one</Link>, with what they bring.
          </Empty>
        </div>
      ) : null}
      <ol className="heap-list">
        {offers.map((offer) => (
          <OneOffer key={offer.load.id} society={society} read={read} offer={offer} />
        ))}
      </ol>
    </Sheet>
  );
}

function OneOffer({ society, read, offer }: { society: string; read: Order; offer: Offer }) {
  const { units, isStraw } = read;
  const { supplier, supplierId, load, order } = offer;
  const { leastUnits, mostUnits, overG, loads, priceMinor, loadMinor } = order;
  const whose = <Link href={`/${society}/office/suppliers/${supplierId}`}>{supplier}</Link>;
  if (mostUnits === 0)
    return (
      <li>
        <p>
          <strong>Nothing more</strong> from {whose}, who brings {load.material.toLowerCase()}.
        </p>
      </li>
    );
  const each = thanksWords(load.thanks, mostUnits);
  const fewer = leastUnits < mostUnits ? ` ${leastUnits || 'None'} will do where old heaps have kept well.` : '';
  return (
    <li>
      <p>
        <strong>{unitsWords(load.of, mostUnits)}</strong> of {load.material.toLowerCase()} from {whose}
        <span className="small soft" style={{ display: 'block' }}>
          {isStraw ? '' : `${loads.toLocaleString('en-GB')} barrow-loads, `}
          {overG === 0 ? 'nothing' : formatMassIn(overG, units)} over; {costWords(priceMinor, each)}
          {loadMinor === null || isStraw ? '' : `, ${poundsWords(loadMinor)} a barrow-load`}.{fewer}
        </span>
      </p>
      <Link
        className="button first"
        href={`/${society}/office/deliveries/new?${new URLSearchParams({ load: load.id, units: String(mostUnits) })}`}
      >
        Plan it
      </Link>
      <Reason ask={`Why ${mostUnits.toLocaleString('en-GB')} ${unitWord(load.of, mostUnits)}?`}>
        <p className="small">
          {massBetween(read.wanted.leastG, read.wanted.mostG, units)} wanted ÷ {formatMassIn(offer.unitG, units)} each
          {litresWords(offer)}, rounded up to whole ones.{' '}
          {isStraw ? '' : `Of this a barrow-load is ${formatMassIn(offer.barrowLoadG, units)}.`}
        </p>
      </Reason>
    </li>
  );
}

function litresWords({ load: { of, usualGPerL, densityGPerL } }: Offer): string {
  if (of.unit === 'bales' || of.unit === 'tonnes') return '';
  const litres = of.unit === 'trailer' ? of.trailerLitres : 1000;
  return ` (${litres.toLocaleString('en-GB')} L at ${usualGPerL} g a litre${densityGPerL === null ? ', the usual density' : ''})`;
}
