import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMass } from '@/lib/domain/quantity/load';
import type { Turn, TurnReason } from '@/lib/domain/rotation/turn';
import { Table } from './table';

type Line = {
  readonly id: string;
  readonly kind: 'bed' | 'plot';
  readonly label: string;
  readonly plotNumber: string;
  readonly areaCm2: number;
  readonly turn: Turn;
  readonly massG: number;
};
type Need = {
  readonly season: number;
  readonly loads: number;
  readonly barrowLoadG: number;
  readonly rateGPerM2: number;
  readonly lines: readonly Line[];
};

/** How a need was worked out, ground by ground, down to the rounding. */
export function NeedReason({ need, units }: { need: Need; units: Units }) {
  const total = need.lines.reduce((sum, { massG }) => sum + massG, 0);
  return (
    <>
      <Table
        caption="How the need was worked out"
        columns={[{ head: 'ground' }, { head: 'why' }, { head: 'wants', number: true }]}
        rows={need.lines.map((line) => ({
          key: line.id,
          cells: [
            line.kind === 'bed' ? `${line.plotNumber}, bed ${line.label}` : `plot ${line.plotNumber}`,
            <TurnWords key="why" turn={line.turn} units={units} />,
            line.massG ? formatMass(line.massG) : '–',
          ],
        }))}
        foot={['together', `for ${need.season}, at ${need.rateGPerM2 / 1000} kg/m²`, formatMass(total)]}
      />
      <p className="small">
        {formatMass(total)} ÷ {formatMass(need.barrowLoadG)} a barrow-load, rounded up once:{' '}
        <strong>{need.loads}</strong>.
      </p>
    </>
  );
}

/** A turn's reasons, each with its area. */
export function TurnWords({ turn, units }: { turn: Turn; units: Units }) {
  return turn.reasons.map((reason) => (
    <span key={JSON.stringify(reason)} style={{ display: 'block' }}>
      {formatArea(reason.areaCm2, units)} {words(reason, turn.intervalYears)}
    </span>
  ));
}

function words(reason: TurnReason, intervalYears: number): string {
  if (reason.code === 'due') return `due: last manured for ${reason.manuredFor}`;
  if (reason.code === 'not-yet') return `not yet: manured for ${reason.manuredFor}, due for ${reason.dueFor}`;
  if (reason.code === 'crop-takes-none') return 'not due: the crop planned there takes none';
  return `assumed: no record, so 1/${intervalYears} of it counts each year`;
}
