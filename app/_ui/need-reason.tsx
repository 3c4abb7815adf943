import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import type { StrawReason } from '@/lib/domain/need/straw-need';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMass } from '@/lib/domain/quantity/load';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import type { Turn, TurnReason } from '@/lib/domain/rotation/turn';
import { Table } from './table';

type Line = {
  readonly id: string;
  readonly kind: 'bed' | 'plot';
  readonly label: string;
  readonly plotNumber: string;
  readonly areaCm2: number;
  readonly turn: Turn;
  readonly straw: readonly StrawReason[];
  readonly massG: number;
};
type Need = {
  readonly season: number;
  readonly serves: 'manure' | 'straw' | 'nothing';
  readonly loadUnit: LoadUnit;
  readonly loads: number;
  readonly barrowLoadG: number;
  readonly rateGPerM2: number;
  readonly lines: readonly Line[];
};

/** How a need was worked out, ground by ground, down to the rounding. */
export function NeedReason({ need, units }: { need: Need; units: Units }) {
  const isStraw = need.serves === 'straw';
  if (need.serves === 'nothing')
    return (
      <p className="small">This material is neither a dressing for a turn nor straw: what you ask for is a want.</p>
    );
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
            isStraw ? (
              <StrawWords key="why" line={line} units={units} />
            ) : (
              <TurnWords key="why" turn={line.turn} units={units} />
            ),
            line.massG ? formatMass(line.massG) : '–',
          ],
        }))}
        foot={[
          'together',
          isStraw ? `for ${need.season}, by the recipes` : `for ${need.season}, at ${need.rateGPerM2 / 1000} kg/m²`,
          formatMass(total),
        ]}
      />
      <p className="small">
        {formatMass(total)} ÷ {formatMass(need.barrowLoadG)} a {need.loadUnit === 'bale' ? 'bale' : 'barrow-load'},
        rounded up once: <strong>{need.loads}</strong>.
      </p>
    </>
  );
}

function StrawWords({ line: { kind, straw }, units }: { line: Line; units: Units }) {
  if (straw.length === 0)
    return kind === 'plot' ? 'no beds drawn, so nothing is planned' : 'nothing is planned there that wants straw';
  return straw.map((one, at) => (
    <span key={`${one.cropGroup} ${at}`} style={{ display: 'block' }}>
      {formatArea(one.areaCm2, units)} of {cropGroupName(one.cropGroup).toLowerCase()} at{' '}
      {formatRate(one.rateGPerM2, units)}
      {one.strewnCm2 ? `, less ${formatArea(one.strewnCm2, units)} strewn already` : ''}
    </span>
  ));
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
