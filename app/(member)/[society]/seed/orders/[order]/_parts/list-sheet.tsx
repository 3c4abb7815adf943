import { randomUUID } from 'node:crypto';
import { TextField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { seedAmountWords } from '@/app/_ui/seed-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { plainAmount, type SeedUnit } from '@/lib/domain/seed/seed-unit';
import { wantAction } from '../../../actions';
import type { ClaimProps, Read } from './read';

const suffixes: Readonly<Record<SeedUnit, string>> = { seeds: 'seeds', milligrams: 'g', sets: 'sets' };

/** What a holding wants of an order that takes lists: its own list is one press away. */
export function ListSheet({ society, order, items, claim }: ClaimProps) {
  const { holding, names, isOwn, mayPutDown, wants } = claim;
  const wanted = new Map(wants.map(({ itemId, amount }) => [itemId, amount]));
  const action = wantAction.bind(null, society, order.id, holding.id);
  const title = wants.length
    ? `You want ${wants.length} ${wants.length === 1 ? 'thing' : 'things'}`
    : 'Nothing is put down yet';
  return (
    <Sheet
      title={title}
      aside={
        <span className="soft">
          plot {holding.plots.join(', ')}
          {isOwn ? '' : `: ${names.join(' and ')}`}
        </span>
      }
    >
      <TakeOver action={action} claim={claim} items={items} />
      {mayPutDown ? (
        <Form
          action={action}
          writeId={randomUUID()}
          submit="Put it down"
          labels={Object.fromEntries(items.map((item) => [`amount:${item.id}`, `${item.cropName} “${item.variety}”`]))}
        >
          <TickGroup name="wants" kind="checkbox" legend="What is wanted" className="form">
            {items.map((item) => (
              <TextField
                key={item.id}
                name={`amount:${item.id}`}
                label={`${item.cropName} “${item.variety}”`}
                hint={hintOf(item, claim.suggested?.amounts[item.id])}
                value={wanted.has(item.id) ? plainAmount(item.unit, wanted.get(item.id) ?? 0) : ''}
                inputMode={item.unit === 'milligrams' ? 'decimal' : 'numeric'}
                suffix={suffixes[item.unit]}
                className="short-field"
              />
            ))}
          </TickGroup>
          <p className="small soft">Empty: none of it. To withdraw all of it, empty every line and put it down.</p>
        </Form>
      ) : (
        <p className="soft">The secretary has named another holder of this plot, who puts its list down.</p>
      )}
    </Sheet>
  );
}

function hintOf({ unit, packs }: Read['items'][number], suggested: number | undefined): string {
  const sold = packs.map(
    ({ amount, priceMinor }) => `${seedAmountWords(unit, amount)} for ${formatPounds(priceMinor)}`,
  );
  const yours = suggested ? `Your list: ${seedAmountWords(unit, suggested)}. ` : '';
  return `${yours}Sold as ${sold.join(', or ')}; packs are shared.`;
}

type TakeOverProps = Pick<ClaimProps, 'claim' | 'items'> & { readonly action: Parameters<typeof Form>[0]['action'] };

/** The holding's own order list, put down in one press; what is put down of other things stays. */
function TakeOver({ action, claim: { suggested, wants, mayPutDown }, items }: TakeOverProps) {
  if (!suggested || !mayPutDown) return null;
  const listed = items.filter(({ id }) => suggested.amounts[id]);
  const stands = new Map(wants.map(({ itemId, amount }) => [itemId, amount]));
  const isTaken = listed.every(({ id }) => stands.get(id) === suggested.amounts[id]);
  return (
    <>
      {listed.length && !isTaken ? (
        <Form
          action={action}
          writeId={randomUUID()}
          submit={`Take over my list: ${listed.length} ${listed.length === 1 ? 'thing' : 'things'}`}
        >
          {listed.map(({ id, unit }) => (
            <input key={id} type="hidden" name={`amount:${id}`} value={plainAmount(unit, suggested.amounts[id] ?? 0)} />
          ))}
          <p>
            From your plan, less what your tin holds:{' '}
            {listed
              .map(({ id, unit, variety }) => `${seedAmountWords(unit, suggested.amounts[id] ?? 0)} of “${variety}”`)
              .join(', ')}
            .
          </p>
        </Form>
      ) : null}
      {suggested.unlisted.length ? (
        <Reason
          ask={`${suggested.unlisted.length} of your list ${suggested.unlisted.length === 1 ? 'is' : 'are'} not on this order`}
        >
          <ul>
            {suggested.unlisted.map((want) => (
              <li key={`${want.cropKey} ${want.variety}`}>
                {want.cropName}
                {want.variety ? ` “${want.variety}”` : ''}:{' '}
                {'seeds' in want ? seedAmountWords('seeds', want.seeds) : seedAmountWords('sets', want.sets)}
              </li>
            ))}
          </ul>
        </Reason>
      ) : null}
    </>
  );
}
