import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { loadsWords, unitWord, whenWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import { lookAction } from '../../../actions';
import type { Collecting } from './share-row';

type Props = { society: string; read: Collecting };

/** Before the heap runs short: what is seen, what is still to come, and what helps. */
export function RunsShort({ society, read: { estimate, runs, delivery } }: Props) {
  if (!estimate?.mayRunShort) return null;
  return (
    <div className="notice short wide" role="status">
      <p>
        <strong>It may run short:</strong> about {estimate.byEye} left for {estimate.toCome} still to come.
      </p>
      {runs ? (
        <p>
          <Link href={`/${society}/office/deliveries/${delivery.id}#heap`}>Measure the heap again</Link>: the shares are
          worked out anew by the same queue.
        </p>
      ) : (
        <p>The secretary and the gate helper are told; the shares hold until the heap is measured again.</p>
      )}
    </div>
  );
}

/** What is left by the count and by eye, and a look of one's own. */
export function WhatIsLeft({ society, read: { estimate, look, timeZone, mayLook, delivery } }: Props) {
  if (!estimate) return null;
  return (
    <Sheet title="What is left on the heap">
      <dl>
        <dt>by the count</dt>
        <dd>{loadsWords(estimate.byCount, delivery.loadUnit)}</dd>
        <dt>by eye</dt>
        <dd>
          {look && estimate.byEye !== null
            ? `about ${loadsWords(estimate.byEye, delivery.loadUnit)}, as seen ${whenWords(look.at, timeZone)}, less what was ticked off since`
            : 'nobody has looked yet'}
        </dd>
        <dt>still to come</dt>
        <dd>{loadsWords(estimate.toCome, delivery.loadUnit)}</dd>
      </dl>
      {mayLook ? (
        <Form action={lookAction.bind(null, society, delivery.id)} writeId={randomUUID()} submit="That is what I see">
          <TextField
            name="loads"
            label={`About how many ${unitWord(delivery.loadUnit)}s are left?`}
            inputMode="numeric"
            className="short-field"
            hint="Whoever looks helps: everybody is warned before it runs short."
          />
        </Form>
      ) : null}
    </Sheet>
  );
}
