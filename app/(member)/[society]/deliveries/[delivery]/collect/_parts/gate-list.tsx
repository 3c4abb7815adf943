import { randomUUID } from 'node:crypto';
import { unitWord } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { tickAction } from '../../../actions';
import { type Collecting, rowsOfPlot, type Share } from './share-row';
import { SeveralOrNone, UndoLast } from './share-forms';

type Props = { society: string; read: Collecting; plot: string };

/** Everybody's shares by plot, for whoever stands at the gate; one plot is found by its number. */
export function GateList({ society, read, plot }: Props) {
  const others = read.rows.filter(({ isMine }) => !isMine);
  const found = rowsOfPlot(others, plot);
  return (
    <div id="by-plot" className="wide">
      <Sheet title="By plot" flush aside={<span className="soft">{found.length} shares</span>}>
        <div className="sheet-body">
          <form method="get" action="#by-plot" className="inline-form">
            <TextField name="plot" label="Plot number" value={plot} className="short-field" />
            <button type="submit" className="button">
              Find it
            </button>
            {plot ? (
              <a className="button" href="?#by-plot">
                Everybody
              </a>
            ) : null}
          </form>
        </div>
        {found.length === 0 ? (
          <div className="sheet-body">
            <Empty>
              {plot ? `No plot ${plot} has a share here that is not your own.` : 'Nobody else has a share.'}
            </Empty>
          </div>
        ) : null}
        <ol className="heap-list">
          {found.map((row) => (
            <GateRow key={row.bookingId} society={society} read={read} row={row} />
          ))}
        </ol>
      </Sheet>
    </div>
  );
}

function GateRow({ society, read: { delivery, timeZone }, row }: Omit<Props, 'plot'> & { row: Share }) {
  const { bookingId, plots, names, share, collected } = row;
  const at = { society, deliveryId: delivery.id, row };
  const number = plots.join(', ');
  return (
    <li>
      <p>
        <strong>Plot {number}</strong> <span className="figure">{`${collected} of ${share}`}</span>
        <br />
        <span className="small soft">{names}</span>
      </p>
      {collected < share ? (
        <Form
          action={tickAction.bind(null, society, delivery.id, bookingId)}
          writeId={randomUUID()}
          className="inline-form"
        >
          <button type="submit" name="loads" value="1" className="button first">
            One more
            <span className="sr-only">
              {' '}
              {unitWord(delivery.loadUnit)} for plot {number}
            </span>
          </button>
        </Form>
      ) : (
        <span className="mark kept">all fetched</span>
      )}
      <UndoLast {...at} timeZone={timeZone} />
      <SeveralOrNone {...at} />
    </li>
  );
}
