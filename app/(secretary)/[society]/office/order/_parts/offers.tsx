import Link from 'next/link';
import { Empty, Reason, Sheet } from '@/app/_ui/sheet';
import { costWords, poundsWords, unitsWords, unitWord } from '@/app/_ui/supplier-words';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { countBetween, massBetween, type Offer, type Order } from './order-words';

/** The same in each supplier's own units, each with its reason, and one way to plan it. */
export function Offers({ society, read }: { society: string; read: Order }) {
  const { offers, isStraw } = read;
  return (
    <Sheet title="In the suppliers’ own loads" wide flush>
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
  const word = unitWord(load.of, mostUnits);
  const each = load.thanks && mostUnits > 1 ? `${load.thanks}, each` : load.thanks;
  const enough =
    leastUnits < mostUnits ? ` ${countBetween(leastUnits, leastUnits)} will do where old heaps have kept well.` : '';
  return (
    <li>
      <p>
        <strong>{mostUnits === 0 ? 'Nothing more' : unitsWords(load.of, mostUnits)}</strong>{' '}
        {load.material.toLowerCase()} from <Link href={`/${society}/office/suppliers/${supplierId}`}>{supplier}</Link>
        {mostUnits === 0 ? null : (
          <span className="small soft" style={{ display: 'block' }}>
            {isStraw ? '' : `${loads.toLocaleString('en-GB')} barrow-loads, `}
            {formatMassIn(overG, units)} over; {costWords(priceMinor, each)}
            {loadMinor === null || isStraw ? '' : `, ${poundsWords(loadMinor)} a barrow-load`}.{enough}
          </span>
        )}
      </p>
      {mostUnits === 0 ? (
        <span />
      ) : (
        <Link
          className="button first"
          href={`/${society}/office/deliveries/new?${new URLSearchParams({ load: load.id, units: String(mostUnits) })}`}
        >
          Plan it
        </Link>
      )}
      {mostUnits === 0 ? null : (
        <Reason ask={`Why ${mostUnits.toLocaleString('en-GB')} ${word}?`}>
          <p className="small">
            {massBetween(offer.wanted.leastG, offer.wanted.mostG, units)} wanted ÷ {formatMassIn(offer.unitG, units)}{' '}
            each
            {load.of.unit === 'bales' || load.of.unit === 'tonnes'
              ? ''
              : ` (${load.of.unit === 'trailer' ? load.of.trailerLitres.toLocaleString('en-GB') : '1,000'} L at ${load.usualGPerL} g a litre${load.densityGPerL === null ? ', the usual density' : ''})`}
            , rounded up to whole ones.{' '}
            {isStraw
              ? ''
              : `Of this manure a barrow-load is ${formatMassIn(offer.barrowLoadG, units)}, so that ${formatMassIn(offer.needG, units)} would be booked.`}
          </p>
        </Reason>
      )}
    </li>
  );
}
