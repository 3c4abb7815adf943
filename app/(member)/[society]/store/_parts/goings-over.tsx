import { randomUUID } from 'node:crypto';
import { dayWords } from '@/app/_ui/delivery-words';
import { TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, Reason, Sheet } from '@/app/_ui/sheet';
import { amountWords, badWhyWords } from '@/app/_ui/store-words';
import { Table } from '@/app/_ui/table';
import type { ReadLot } from '@/lib/usecases/store/read-lot';
import { undoOfLotAction } from '../actions';

/** Everything that was found, the newest first; each can be undone, with those that rest on it. */
export function GoingsOver({ society, read: { goings, measure, units } }: { society: string; read: ReadLot }) {
  const told = (amount: number) => amountWords(amount, measure, units);
  return (
    <Sheet title="Gone over" flush>
      {goings.length === 0 ? (
        <div className="sheet-body">
          <Empty>Not yet. The first round shows whether it keeps as its kind does.</Empty>
        </div>
      ) : null}
      <Table
        caption="Goings over"
        columns={[
          { head: 'day' },
          { head: 'used', number: true },
          { head: 'bad', number: true },
          { head: 'sound', number: true },
          { head: '' },
        ]}
        rows={goings.toReversed().map(({ id, on, used, bad, badWhy, sound, by }, at) => ({
          key: id,
          cells: [
            <>
              {dayWords(on)}
              <br />
              <span className="small soft">{by ?? 'a holder of before'}</span>
            </>,
            told(used),
            <>
              {told(bad)}
              {badWhy ? <span className="small soft"> {badWhyWords[badWhy]}</span> : null}
            </>,
            told(sound),
            <Reason key="undo" ask="Undo">
              <Form
                action={undoOfLotAction.bind(null, society, id)}
                writeId={randomUUID()}
                submit="Undo it"
                className="form"
              >
                {at === 0 ? null : <TickField name="withAfter" label={`and the ${at === 1 ? 'one' : at} after it`} />}
              </Form>
            </Reason>,
          ],
        }))}
      />
    </Sheet>
  );
}
