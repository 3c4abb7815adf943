import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { SelectField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { tipAtAction } from '../actions';
import { loadedWords, overWords, unitOf } from './heap-words';
import { hereOf, type Placed } from './placed';

type Props = { society: string; read: Placed; linkTo: (from: string) => string };

/** The drop points there are, the best first, each with how much more is walked from it than from the best place. */
export function Compared({ society, read, linkTo }: Props) {
  const { placing, dropPoints, units, basis, runs, fromId } = read;
  const nameOf = (id: string) => dropPoints.find((one) => one.id === id)?.name ?? '';
  const isTippedAt = (id: string) => basis.delivery?.dropPointId === id;
  const delivery = runs && basis.delivery?.mayMove ? basis.delivery : null;
  const unit = unitOf(units);
  const hasOwn = placing.dropPoints.some(({ own }) => own.length > 0);
  return (
    <Sheet title="The drop points compared" flush>
      {placing.dropPoints.length === 0 ? <Empty>There are no drop points yet.</Empty> : null}
      <Table
        caption="Drop points compared"
        columns={[
          { head: 'drop point' },
          { head: `loaded ${unit}`, number: true },
          { head: 'against the best' },
          ...(hasOwn ? [{ head: `yours, loaded ${unit}`, number: true }] : []),
        ]}
        rows={placing.dropPoints.map(({ id, loadedCm, overBestCm, own }) => ({
          key: id,
          mine: isTippedAt(id),
          cells: [
            <div key="name">
              {id === fromId ? <strong>{nameOf(id)}</strong> : <Link href={linkTo(id)}>{nameOf(id)}</Link>}
              {isTippedAt(id) ? (
                <div className="small">{basis.delivery?.mayMove ? 'to be tipped here' : 'tipped here'}</div>
              ) : null}
            </div>,
            loadedWords(loadedCm, units),
            overBestCm === null || !placing.best ? '–' : overWords(overBestCm, placing.best.loadedCm, units),
            ...(hasOwn
              ? [
                  loadedWords(
                    own.reduce((sum, line) => sum + (line.loadedCm ?? 0), 0),
                    units,
                  ),
                ]
              : []),
          ],
        }))}
      />
      {delivery && placing.dropPoints.length ? (
        <div className="sheet-body">
          <Form action={tipAtAction.bind(null, society, hereOf(read))} writeId={randomUUID()} submit="Tip it there">
            <SelectField
              name="dropPointId"
              label={`Where “${delivery.name}” is tipped`}
              value={delivery.dropPointId ?? placing.dropPoints[0]?.id}
              choices={placing.dropPoints.map(({ id }) => ({ value: id, label: nameOf(id) }))}
            />
          </Form>
        </div>
      ) : null}
    </Sheet>
  );
}
