import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { Form } from '@/app/_ui/form';
import { seedAmountWords } from '@/app/_ui/seed-words';
import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { keepInTinAction } from '../../../actions';
import type { ClaimProps } from './read';

/** What a holding wanted of an order whose list is closed: what it is given and owes, and into the tin with it. */
export function OutcomeSheet({ society, order, items, claim }: ClaimProps) {
  const { holding, wants, owed, isOwn } = claim;
  const isHere = order.state === 'arrived' || order.state === 'settled';
  const plots = holding.plots.join(', ');
  if (wants.length === 0)
    return (
      <Sheet title={`Nothing for plot ${plots}`}>
        <p>
          Nothing was put down for it. What is left over of the packs is the society’s to give away: ask the secretary.
        </p>
      </Sheet>
    );
  const seed = wants.filter(
    ({ itemId, given, isInTin }) => given && !isInTin && items.find(({ id }) => id === itemId)?.unit !== 'sets',
  );
  return (
    <Sheet title={isHere ? 'What is yours' : 'What you want'} aside={<span className="soft">plot {plots}</span>} flush>
      <Table
        caption={`Seed of plot ${plots}`}
        columns={[
          { head: 'seed' },
          { head: 'wanted', number: true },
          { head: 'given', number: true },
          { head: isHere ? 'price' : 'about', number: true },
        ]}
        rows={items.flatMap((item) => {
          const want = wants.find(({ itemId }) => itemId === item.id);
          return want
            ? [
                {
                  key: item.id,
                  cells: [
                    <Named key="name" item={item} want={want} />,
                    seedAmountWords(item.unit, want.amount),
                    want.given === null ? 'not yet' : seedAmountWords(item.unit, want.given),
                    want.minor === null ? '' : formatPounds(want.minor),
                  ],
                },
              ]
            : [];
        })}
        {...(owed
          ? {
              foot: [
                owed.extraMinor ? `with ${formatPounds(owed.extraMinor)} for postage` : 'in all',
                '',
                '',
                formatPounds(owed.minor),
              ],
            }
          : {})}
      />
      <div className="sheet-body">
        {order.state === 'settled' ? (
          <p>
            It stands on <Link href={`/${society}/money`}>your account</Link>, with how to pay.
          </p>
        ) : order.state === 'called-off' ? null : (
          <p className="small soft">What is owed is worked out again from what came, and charged when it is settled.</p>
        )}
        {isOwn && isHere && seed.length ? (
          <Form
            action={keepInTinAction.bind(null, society, order.id, holding.id)}
            writeId={randomUUID()}
            submit={`Put ${seed.length === 1 ? 'it' : `these ${seed.length}`} into my tin`}
          >
            <p className="small soft">
              Under this year; correct it from the packet if it says another. Seed by weight is counted by printed
              weights.
            </p>
          </Form>
        ) : null}
      </div>
    </Sheet>
  );
}

type NamedProps = {
  readonly item: ClaimProps['items'][number];
  readonly want: ClaimProps['claim']['wants'][number];
};

function Named({ item: { cropName, variety, unit }, want }: NamedProps) {
  const isShort = want.given !== null && want.given < want.amount;
  return (
    <>
      {cropName} “{variety}”
      <div className="small soft">
        {want.isHandedOut ? 'handed out' : want.given === null ? '' : 'to be fetched'}
        {isShort && want.level !== null
          ? `; too little came: ${seedAmountWords(unit, want.level)} each, and the odd ones by lot`
          : ''}
        {want.isInTin ? '; in your tin' : ''}
      </div>
    </>
  );
}
