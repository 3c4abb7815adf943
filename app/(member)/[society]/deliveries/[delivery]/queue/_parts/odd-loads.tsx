import { creditWords, loadsWords } from '@/app/_ui/delivery-words';
import type { QueueLine, QueueProps } from './queue-result';

const given = ['odd-load', 'late-turn'];
const missed = ['odd-load-missed', 'late-missed'];

/** The last, partial round: to whom its odd loads went, who missed, and what decided it. */
export function OddLoads({ result: { lines, order, ended }, unit, nameOf }: QueueProps) {
  if (ended.left === 0) return <p>No odd loads: the last round was served whole, or all that was asked for is met.</p>;
  const inOrder = lines.toSorted((a, b) => order.indexOf(a.bookingId) - order.indexOf(b.bookingId));
  const named = (codes: readonly string[]) =>
    inOrder
      .filter(({ reason }) => codes.includes(reason.code))
      .map((line) => `${nameOf(line.bookingId)} (${byWords(line)})`);
  const [to, not] = [named(given), named(missed)];
  return (
    <>
      <p>
        {loadsWords(ended.left, unit)} for {ended.contenders} claims: one each to whoever was owed most; of equal
        credits, to those ahead in the lot.
      </p>
      <p>One each to: {to.join(', ') || 'nobody beyond what they had collected'}.</p>
      <p>Missed: {not.join(', ') || 'nobody'}. Their part of a load stays owed to them.</p>
    </>
  );
}

function byWords({ reason, creditBeforeMillionths, late }: QueueLine): string {
  if (late !== null) return `number ${late + 1} to come`;
  const by = 'by' in reason && reason.by === 'credit' ? 'by credit' : 'by lot';
  return `owed ${creditWords(creditBeforeMillionths)}, ${by}`;
}
