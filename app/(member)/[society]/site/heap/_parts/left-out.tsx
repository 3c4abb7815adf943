import { loadsWords } from '@/app/_ui/delivery-words';
import { type Placed, unitFor } from './placed';

/** What is not in the sums, and what to do about it. */
export function LeftOut({ read }: { read: Placed }) {
  const { leftOut, notMeasured, loads, parts, placing } = read;
  const unit = unitFor(read);
  const said = [
    placing.basis === 'straight-lines' &&
      'No paths are drawn: the ways are straight lines, which is less than anybody will walk, and only the drop points can be compared.',
    parts > 1 &&
      `The paths fall into ${parts} parts that are not joined: from one to another the way is taken straight over the ground. Where they do meet, draw an end to within a metre of the other path.`,
    leftOut.length > 0 &&
      `Not in the sums, because nobody has measured them: ${leftOut.map(({ number, loads: count }) => `plot ${number}${count === null ? '' : ` (${loadsWords(count, unit)})`}`).join(', ')}.`,
    notMeasured.length > leftOut.length &&
      `Not measured, and with no loads: plot ${notMeasured.filter((number) => !leftOut.some((one) => one.number === number)).join(', ')}.`,
    loads.elsewhere > 0 && `${loadsWords(loads.elsewhere, unit)} go to plots on another site.`,
    loads.nowhere > 0 && `${loadsWords(loads.nowhere, unit)} were asked for by holdings that have no plot today.`,
  ].filter((words) => words !== false);
  if (said.length === 0) return null;
  return (
    <ul>
      {said.map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}
