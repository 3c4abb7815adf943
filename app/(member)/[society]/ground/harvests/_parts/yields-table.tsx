import { Table } from '@/app/_ui/table';
import { amountWords, rangeFigures, weightWords, yieldUnit, yieldWords } from '@/app/_ui/yield-words';
import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import type { readYields } from '@/lib/usecases/harvest/read-yields';

export type YieldingCrop = Awaited<ReturnType<typeof readYields.run>>['crops'][number];
type Line = YieldingCrop['yields'][number];
type Props = { crops: readonly YieldingCrop[]; units: Units; withPlot: boolean };

/** Each crop, bed and season: what the ground gave, and what is printed of it. The season at hand stands before those past. */
export function YieldsTable({ crops, units, withPlot }: Props) {
  const where = ({ plotNumber, bedName }: Line) => (withPlot ? `${plotNumber}, bed ${bedName}` : `bed ${bedName}`);
  return (
    <Table
      caption="Yields by crop, season and bed"
      columns={[
        { head: 'crop' },
        { head: units === 'metric' ? 'on each m²' : 'on each sq yd', number: true },
        { head: `printed, ${yieldUnit(units)}`, number: true },
        { head: 'in all', number: true },
        { head: 'ground', number: true },
        { head: 'harvests', number: true },
      ]}
      rows={crops.flatMap((crop) =>
        crop.yields.map((one) => ({
          key: `${crop.cropKey} ${one.season} ${one.bedId} ${one.measure}`,
          cells: [
            <>
              {crop.name}
              <div className="small soft">
                {one.season}, {where(one)}
                {one.isSoFar ? ', so far' : ''}
              </div>
            </>,
            <>
              <strong>{yieldWords(one, units)}</strong>
              <Weighed crop={crop} one={one} units={units} />
            </>,
            crop.said.length ? rangeFigures(leastSaid(crop), mostSaid(crop), units) : '–',
            amountWords(one.measure, one.amount, units),
            formatArea(one.areaCm2, units),
            one.harvests,
          ],
        })),
      )}
    />
  );
}

function Weighed({
  crop: { pieceG },
  one: { measure, amount, areaCm2 },
  units,
}: {
  crop: YieldingCrop;
  one: Line;
  units: Units;
}) {
  if (measure === 'grams' || pieceG === null || amount === 0) return null;
  return <div className="small soft">about {weightWords((amount * pieceG * 10_000) / areaCm2, units)}</div>;
}

const leastSaid = ({ said }: YieldingCrop) => Math.min(...said.map(({ leastGPerM2 }) => leastGPerM2));
const mostSaid = ({ said }: YieldingCrop) => Math.max(...said.map(({ mostGPerM2 }) => mostGPerM2));
