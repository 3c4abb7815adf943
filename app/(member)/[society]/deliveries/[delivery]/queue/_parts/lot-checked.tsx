import { Reason } from '@/app/_ui/sheet';
import { commitmentOf } from '@/lib/domain/sharing/lot';
import type { QueueProps } from './queue-result';

/** The lot: what was published before booking, the bytes behind it, and how anybody checks one against the other. */
export function LotChecked({ result, nameOf }: Pick<QueueProps, 'result' | 'nameOf'>) {
  const { inputs, seed, canonical, lotOrder, method } = result;
  const matches = commitmentOf(inputs.bytesHex) === inputs.commitment;
  return (
    <>
      <dl className="lot">
        <dt>published before booking</dt>
        <dd>
          <code>{inputs.commitment}</code>
        </dd>
        <dt>the 32 bytes</dt>
        <dd>
          <code>{inputs.bytesHex}</code>
        </dd>
        <dt>do they match?</dt>
        <dd>
          {matches
            ? 'Yes: the SHA-256 of these bytes is what was published.'
            : 'No: the SHA-256 of these bytes is something else. Ask the committee before you rely on this lot.'}
        </dd>
        <dt>seed</dt>
        <dd>
          <code>{seed}</code>
        </dd>
        <dt>order drawn</dt>
        <dd>{lotOrder.map(nameOf).join(', ')}</dd>
        <dt>method</dt>
        <dd>
          {method.name}, version {method.version}
        </dd>
      </dl>
      <Reason ask="How to check it with any SHA-256 tool">
        <p>
          The SHA-256 of the 32 bytes (as bytes, not as text) is what was published. The seed is the SHA-256 of those
          bytes followed by this text, in UTF-8, each line ended by a line feed: the delivery, then for each booking its
          id, loads asked, loads needed, and credit in millionths of a load.
        </p>
        <pre className="small canonical" role="region" aria-label="The text" tabIndex={0}>
          {canonical}
        </pre>
        <p>
          A claim’s rank is the SHA-256 of the text “seed:id”, smallest first. Whoever runs the server knew the bytes
          from the start and could still cheat.
        </p>
      </Reason>
    </>
  );
}
