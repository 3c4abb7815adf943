import type { Read, Report } from './told';

type Props = { report: Report; blocks: Read['blocks'] };

/** The plots that the lot laid out and the report leaves out, and why. */
export function LeftOut({ report, blocks }: Props) {
  const dropped = blocks.filter((one) => one.dropped);
  return (
    <ul>
      <li>{count(report.whole)} with both results, which are counted.</li>
      <li>{count(report.half)} with one result only, left out.</li>
      <li>{count(report.none)} with no result.</li>
      <li>
        {count(dropped.length)} that dropped out
        {dropped.length
          ? `: ${dropped.map(({ number, dropped: why }) => `block ${number}, “${why?.why}”`).join('; ')}`
          : ''}
        .
      </li>
    </ul>
  );
}

function count(plots: number): string {
  return plots === 1 ? '1 plot' : `${plots} plots`;
}
