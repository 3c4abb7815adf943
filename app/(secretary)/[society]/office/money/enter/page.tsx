import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { type Choice, SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { readLedgerForms } from '@/lib/usecases/money/read-money';
import { chargeAction, moveAction, openingAction, paymentAction, supplierAction } from '../actions';
import { AmountField, bankOrCash, DayField, holdingChoices, ownChoices } from '../_parts/entry-fields';

export const metadata: Metadata = { title: 'Enter money' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ holding?: string; delivery?: string }> };

export default async function EnterPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { holding, delivery } = await searchParams;
  const { today, holders, own, deliveries } = await ask(readLedgerForms, society);
  const choices = holdingChoices(holders);
  const every: Choice[] = [...bankOrCash, ...ownChoices(own), ...holdingChoices(holders, 'holding:')];
  const labels = { amount: 'Amount', on: 'Day', words: 'Words', who: 'Who', account: 'Account', holdingId: 'Plot' };
  return (
    <>
      <PageHead
        title="Enter a payment or a charge"
        lead="An entry is never changed once it stands. What is wrong is taken back by another, and entered anew."
      >
        <Link className="button" href={`/${society}/office/money`}>
          Balances
        </Link>
      </PageHead>
      <div className="stack">
        <Sheet title="A holding has paid">
          <Form
            action={paymentAction.bind(null, society)}
            writeId={randomUUID()}
            submit="Enter the payment"
            labels={labels}
          >
            <SelectField name="holdingId" label="Plot" empty="choose a plot" value={holding} choices={choices} />
            <AmountField />
            <DayField today={today} />
            <SelectField name="into" label="Into" value="bank" choices={bankOrCash} className="short-field" />
            <TextField name="words" label="Words" hint="may be left empty; its holders read them" />
          </Form>
        </Sheet>
        <Sheet title="A supplier was paid">
          <Form
            action={supplierAction.bind(null, society)}
            writeId={randomUUID()}
            submit="Enter what was paid"
            labels={labels}
          >
            <SelectField
              name="deliveryId"
              label="For the delivery"
              empty="none in particular"
              value={delivery}
              choices={deliveries.map(({ id, name }) => ({ value: id, label: name }))}
            />
            <AmountField />
            <DayField today={today} />
            <SelectField name="from" label="From" value="bank" choices={bankOrCash} className="short-field" />
            <TextField name="words" label="Whom, and what for" />
          </Form>
        </Sheet>
      </div>
      <div className="stack">
        <Sheet title="Charge something else">
          <Form action={chargeAction.bind(null, society)} writeId={randomUUID()} submit="Charge it" labels={labels}>
            <p>Seed, rents, a key. Deliveries are charged by themselves when they are settled.</p>
            <SelectField
              name="who"
              label="Who is charged"
              empty="choose"
              value={holding}
              choices={[
                { value: 'holdings', label: 'every holding, the same each' },
                { value: 'plots', label: 'every holding, by its plots' },
                ...choices.map((choice) => ({ ...choice, group: 'one holding' })),
              ]}
            />
            <AmountField label="Each is charged" />
            <DayField today={today} />
            <SelectField name="account" label="On the account" empty="choose an account" choices={ownChoices(own)} />
            <TextField name="words" label="What for" hint="such as: seed potatoes, 2 kg" />
          </Form>
        </Sheet>
        <Sheet title="Move money, or open an account">
          <Reason ask="From one account to another">
            <Form action={moveAction.bind(null, society)} writeId={randomUUID()} submit="Move it" labels={labels}>
              <SelectField name="from" label="From" empty="choose an account" choices={every} />
              <SelectField name="to" label="To" empty="choose an account" choices={every} />
              <AmountField />
              <DayField today={today} />
              <TextField
                name="words"
                label="What for"
                hint="such as: cash taken to the bank; seed bought; paid back to a holding"
              />
            </Form>
          </Reason>
          <Reason ask="What stood on it before this ledger">
            <Form action={openingAction.bind(null, society)} writeId={randomUUID()} submit="Enter it" labels={labels}>
              <SelectField name="account" label="Account" empty="choose an account" choices={every} />
              <SelectField
                name="side"
                label="What it is"
                value="has"
                choices={[
                  { value: 'has', label: 'the society has it, or is owed it' },
                  { value: 'owes', label: 'the society owes it' },
                ]}
              />
              <AmountField />
              <DayField today={today} />
            </Form>
          </Reason>
        </Sheet>
      </div>
    </>
  );
}
