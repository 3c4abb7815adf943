import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { ReadLot } from '@/lib/usecases/store/read-lot';
import { expectedReasons, conditionsWords, curingDaysWords, lifeWords } from './published-words';

/** What is published of a kind: how long it keeps and in what, how it is cured, each account with its source. */
export function LotPublished({ read: { name, published } }: { read: ReadLot }) {
  const { lives, curings, expected } = published;
  return (
    <Sheet title={`${name}: what is published`} flush>
      <Table
        caption="How long it keeps"
        columns={[{ head: 'keeps' }, { head: 'at' }, { head: 'source' }]}
        rows={lives.map((life, at) => ({
          key: String(at),
          mine: life.starts,
          cells: [
            lifeWords(life),
            conditionsWords(life),
            <span key="s" className="small">
              {sourceWords(life.source)}
            </span>,
          ],
        }))}
      />
      {curings.length ? (
        <Table
          caption="How it is cured"
          columns={[{ head: 'cured' }, { head: 'at' }, { head: 'source' }]}
          rows={curings.map((curing, at) => ({
            key: String(at),
            mine: at === 0,
            cells: [
              curingDaysWords(curing),
              conditionsWords(curing),
              <span key="s" className="small">
                {sourceWords(curing.source)}
              </span>,
            ],
          }))}
        />
      ) : null}
      <div className="sheet-body">
        <p>
          Eight lots of ten like this one are taken to live{' '}
          {expected.leastDays < 10 ? expected.leastDays.toFixed(1) : Math.round(expected.leastDays)} to{' '}
          {Math.round(expected.mostDays)} days, till three of ten pieces are bad.
        </p>
        <Reason ask="Why so?">
          <ul className="small">
            <li>
              The marked account is what a forecast sets out from; your own goings over then count for more and more.
            </li>
            {expected.reasons.map((reason) => (
              <li key={reason}>{expectedReasons[reason]}</li>
            ))}
          </ul>
        </Reason>
      </div>
    </Sheet>
  );
}
