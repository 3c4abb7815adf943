import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { amountWords, rangeWords, yieldWords } from '@/app/_ui/yield-words';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { readYields } from '@/lib/usecases/harvest/read-yields';

type Crop = Awaited<ReturnType<typeof readYields.run>>['crops'][number];

/** One crop: each bed and season, the latest first, and what is printed of it. */
export function CropYields({ crop, units, withPlot }: { crop: Crop; units: Units; withPlot: boolean }) {
  return (
    <Sheet title={crop.name} flush wide>
      <Table
        caption={`Yields of ${crop.name.toLowerCase()}`}
        columns={[
          { head: 'season' },
          { head: 'bed' },
          { head: 'ground', number: true },
          { head: 'harvests', number: true },
          { head: 'in all', number: true },
          { head: units === 'metric' ? 'on each m²' : 'on each sq yd', number: true },
        ]}
        rows={crop.yields.map((one) => ({
          key: `${one.season} ${one.bedId} ${one.measure}`,
          cells: [
            <>
              {one.season}
              {one.isSoFar ? <span className="small soft">, so far</span> : null}
            </>,
            withPlot ? `${one.plotNumber}, ${one.bedName}` : one.bedName,
            formatArea(one.areaCm2, units),
            one.harvests,
            amountWords(one.measure, one.amount, units),
            <>
              {yieldWords(one, units)}
              {one.measure === 'pieces' && crop.pieceG && one.amount ? (
                <div className="small soft">
                  about {formatRate(Math.max(1, (one.amount * crop.pieceG * 10_000) / one.areaCm2), units)}
                </div>
              ) : null}
            </>,
          ],
        }))}
      />
      <div className="sheet-body">
        <Said crop={crop} units={units} />
      </div>
    </Sheet>
  );
}

function Said({ crop: { said, yields, pieceG }, units }: { crop: Crop; units: Units }) {
  const weighs = pieceG && yields.some(({ measure }) => measure === 'pieces');
  return (
    <>
      {said.length ? (
        <Reason ask={`Printed: ${rangeWords(least(said), most(said), units)}`}>
          <ul className="small">
            {said.map(({ leastGPerM2, mostGPerM2, from, source }) => (
              <li key={`${source} ${leastGPerM2}`}>
                {from}: {rangeWords(leastGPerM2, mostGPerM2, units)}{' '}
                <span className="soft">({sourceWords(source)})</span>
              </li>
            ))}
          </ul>
        </Reason>
      ) : (
        <p className="small soft">Nobody who was read prints a yield of it.</p>
      )}
      {weighs ? (
        <p className="small soft">
          What was counted is taken at {formatMassIn(pieceG, units)} a piece, common practice, where a weight is told as
          “about”.
        </p>
      ) : null}
    </>
  );
}

const least = (said: Crop['said']) => Math.min(...said.map(({ leastGPerM2 }) => leastGPerM2));
const most = (said: Crop['said']) => Math.max(...said.map(({ mostGPerM2 }) => mostGPerM2));
