import { Table } from '@/app/_ui/table';
import type { readTrial } from '@/lib/usecases/trials/read-trials';

type Props = { read: Awaited<ReturnType<typeof readTrial.run>> };

/** The lot: what was published at opening, and once it is drawn, all that anybody needs to draw it again. */
export function TrialLot({ read: { trial, lot } }: Props) {
  return (
    <div className="trial-lot">
      <p>
        When joining opened, 32 bytes were drawn and shown to nobody. When it closes, a coin of its own says for each
        plot which of its two pieces of ground gets A: nobody chooses, and nobody could know.
      </p>
      <dl className="lot">
        <dt>published at opening</dt>
        <dd>
          <code>{trial.lot.commitment}</code>
        </dd>
        {lot ? (
          <>
            <dt>the 32 bytes</dt>
            <dd>
              <code>{trial.lot.bytesHex}</code>
            </dd>
            <dt>seed</dt>
            <dd>
              <code>{lot.seed}</code>
            </dd>
          </>
        ) : null}
      </dl>
      {lot ? (
        <>
          <p>
            To draw it again, with any SHA-256 tool: the SHA-256 of the 32 bytes (as bytes, not as text) is what was
            published. The seed is the SHA-256 of those bytes followed by this text, in UTF-8, each line ended by a line
            feed: the trial, then for each block its id, its first and its second piece of ground.
          </p>
          <pre className="small canonical" role="region" aria-label="The text" tabIndex={0}>
            {trial.lot.text}
          </pre>
          <p>
            A block’s draw is the SHA-256 of the text “seed:block”. Where its last digit is even (0, 2, 4, 6, 8, a, c,
            e), A is on the first piece and B on the second; where it is odd, the other way round. Blocks are numbered
            by their draws, smallest first. Whoever runs the server knew the bytes from the start and could still cheat.
          </p>
          <Table
            caption="How the lot fell"
            columns={[
              { head: 'block', number: true },
              { head: 'first gets' },
              { head: 'second gets' },
              { head: 'last digit' },
              { head: 'its id' },
              { head: 'its draw' },
            ]}
            rows={lot.rows.map(({ id, number, rank, firstGets, isMine, dropped }) => ({
              key: id,
              mine: isMine,
              cells: [
                `${number}${isMine ? ' (yours)' : ''}${dropped ? ', dropped out' : ''}`,
                firstGets,
                firstGets === 'A' ? 'B' : 'A',
                rank.slice(-1),
                <code key="id">{id}</code>,
                <code key="rank">{rank}</code>,
              ],
            }))}
          />
        </>
      ) : null}
    </div>
  );
}
