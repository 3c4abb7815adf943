import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { Reason } from '@/app/_ui/sheet';
import { amountWords } from '@/app/_ui/yield-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { readHarvests } from '@/lib/usecases/harvest/read-harvests';
import { retireHarvestAction } from '../actions';

export type ShownHarvest = Awaited<ReturnType<typeof readHarvests.run>>['harvests'][number];
type Props = { society: string; harvests: readonly ShownHarvest[]; units: Units };

/** What was logged, newest first; each can be corrected, or taken back as a mistake. */
export function HarvestList({ society, harvests, units }: Props) {
  return (
    <ul className="plain-list">
      {harvests.map((harvest) => (
        <li key={harvest.id}>
          <p>
            <span className="figure">{amountWords(harvest.measure, harvest.amount, units)}</span>{' '}
            <strong>{cropWords(harvest)}</strong>, {harvest.quality}
          </p>
          <p className="small soft">
            {dayWords(harvest.on)}, plot {harvest.plotNumber}, bed {harvest.bedName}
            {harvest.by ? `, by ${harvest.by}` : ''}
            {harvest.isTakenBack ? '; what stood there was taken back since, so it counts in no yield' : ''}
          </p>
          {harvest.notes ? (
            <p className="small" style={{ whiteSpace: 'pre-line' }}>
              {harvest.notes}
            </p>
          ) : null}
          <Reason ask="Correct or take back">
            <div className="actions">
              {harvest.isTakenBack ? null : (
                <Link
                  className="button"
                  href={`/${society}/ground/harvests/new?planting=${harvest.plantingId}&replaces=${harvest.id}`}
                >
                  Correct it
                </Link>
              )}
              <Form
                action={retireHarvestAction.bind(null, society, harvest.id)}
                writeId={randomUUID()}
                submit="Take it back"
                danger
                className="inline-form"
              >
                {null}
              </Form>
            </div>
          </Reason>
        </li>
      ))}
    </ul>
  );
}

/** What it is, with its variety. */
export function cropWords({ cropName, variety }: Pick<ShownHarvest, 'cropName' | 'variety'>): string {
  return variety ? `${cropName} ‘${variety}’` : cropName;
}
