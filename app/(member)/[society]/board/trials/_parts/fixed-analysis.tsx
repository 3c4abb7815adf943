/** The analysis, as it is fixed before anybody joins. */
export function FixedAnalysis() {
  return (
    <ul>
      <li>On each plot, what A gave on a square metre less what B gave.</li>
      <li>The mean of these differences, with the interval of Student’s t that holds in 95 cases of 100.</li>
      <li>A plot with one result is left out, and so is one that dropped out; both are counted in the report.</li>
      <li>Of fewer than three holders nothing is shown: one could work out what another one got.</li>
      <li>
        Until the report opens nobody sees anybody’s results but their own; from then on no result is changed. It is
        looked at once, in this one way.
      </li>
    </ul>
  );
}
