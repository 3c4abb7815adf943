import { shortDayWords } from '@/app/_ui/delivery-words';
import { Reason } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { Forecast } from './left-chart';

/** The chart in figures: on about a dozen days, how likely any is left. */
export function LeftTable({ forecast: { likelyLeft } }: { forecast: Forecast }) {
  const end = likelyLeft.findIndex(({ permille }) => permille <= 10);
  const shown = likelyLeft.slice(0, end < 0 ? likelyLeft.length : end + 1);
  const every = Math.ceil(shown.length / 12);
  const days = shown.filter((_, at) => at % every === 0 || at === shown.length - 1);
  return (
    <Reason ask="In figures">
      <Table
        caption="How likely any is left"
        columns={[{ head: 'on' }, { head: 'some is left in', number: true }]}
        rows={days.map(({ on, permille }) => ({
          key: on,
          cells: [shortDayWords(on), permille > 0 && permille < 10 ? 'under 1 %' : `${Math.round(permille / 10)} %`],
        }))}
      />
    </Reason>
  );
}
