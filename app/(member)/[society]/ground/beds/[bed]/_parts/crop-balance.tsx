import { nutrientFigure, nutrientUnit, nutrientWords, rangeWords } from '@/app/_ui/nutrient-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { potatoAdvice } from '@/lib/domain/catalogue/potato-advice';
import { sources } from '@/lib/domain/catalogue/sources';
import type { FedPiece } from '@/lib/domain/nutrients/bed-balance';
import type { Demand } from '@/lib/domain/nutrients/demand';
import { potatoAdviceOf } from '@/lib/domain/nutrients/potato-advice';
import { percent } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { balanceWords } from './balance-words';

type Props = { pieces: readonly FedPiece[]; name: string | null; season: number; bedCm2: number; units: Units };

/** One crop of the bed: what it demands and takes away, and what each piece of its ground is supplied with beside that. */
export function CropBalance({ pieces, name, season, bedCm2, units }: Props) {
  const [first] = pieces;
  if (!first) return null;
  const { demands, ceiling } = first.balance;
  return (
    <>
      <h3>{name ?? `Nothing planned for ${season}`}</h3>
      {demands.length ? <Demands name={name ?? ''} demands={demands} units={units} /> : null}
      {pieces.map(({ areaCm2, workIds, balance }) => (
        <div key={JSON.stringify([workIds, balance.lastYearMgPerM2])}>
          <p>On {percent(areaCm2, bedCm2)} of the bed:</p>
          <dl style={{ gridTemplateColumns: 'repeat(2, minmax(0, 1fr))' }}>
            <dt>Nitrogen supplied for {season}</dt>
            <dd>{balance.nitrogen ? rangeWords(balance.nitrogen, units) : 'not known'}</dd>
            <dt>of it, left from last year</dt>
            <dd>
              {balance.lastYearMgPerM2 === null
                ? 'not known, so not counted'
                : nutrientWords(balance.lastYearMgPerM2, units)}
            </dd>
            <dt>Phosphate supplied (P₂O₅)</dt>
            <dd>{balance.phosphate ? rangeWords(balance.phosphate, units) : 'not known'}</dd>
          </dl>
          {name ? (
            <ul className="small">
              {balanceWords(balance.reasons, demands.length, units).map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          ) : null}
        </div>
      ))}
      {name ? (
        <Reason ask={`Where this comes from, ${name.toLowerCase()}`}>
          <ul className="small">
            {[...new Set(demands.flatMap(({ source, contentsSource }) => [source, contentsSource]))].map((source) => (
              <li key={source}>
                Demand and harvest: {sourceWords(source)}, {sources[source].table}.
              </li>
            ))}
            {ceiling ? (
              <li>
                English rules let a farm give it {nutrientWords(ceiling.mgPerM2, units)} of nitrogen at the most (
                {sourceWords(ceiling.source)}).
              </li>
            ) : null}
            <li>Left from last year: a tenth of its organic nitrogen ({sourceWords('duev-last-year')}).</li>
          </ul>
        </Reason>
      ) : null}
      {first.cropKey?.endsWith('-potato') ? <PotatoAdvice name={name ?? ''} units={units} /> : null}
    </>
  );
}

/** What the official tables say: all that the crop must find, and what its harvest takes away. */
function Demands({ name, demands, units }: { name: string; demands: readonly Demand[]; units: Units }) {
  const told = (mgPerM2: number | null) => (mgPerM2 === null ? 'not known' : nutrientFigure(mgPerM2, units));
  return (
    <Table
      caption={`What ${name.toLowerCase()} officially demands and removes`}
      columns={[
        { head: `${nutrientUnit(units)}, as` },
        { head: 'N demanded in all', number: true },
        { head: 'harvest', number: true },
        { head: 'takes away N', number: true },
        { head: 'P₂O₅', number: true },
      ]}
      rows={demands.map((demand) => ({
        key: demand.name,
        cells: [
          <div key="as" style={{ minWidth: '8rem' }}>
            {demand.name.toLowerCase()}
            {demand.soilDepthCm === null ? null : (
              <div className="small soft">with the soil’s own to {formatLength(demand.soilDepthCm, units)}</div>
            )}
          </div>,
          told(demand.totalNitrogenMgPerM2),
          demand.yieldGPerM2 ? formatRate(demand.yieldGPerM2, units) : '–',
          told(demand.removedNitrogenMgPerM2),
          told(demand.removedPhosphateMgPerM2),
        ],
      }))}
    />
  );
}

const indices = [0, 1, 2, 3, 4];

/** The one crop whose advice by soil test was read. */
function PotatoAdvice({ name, units }: { name: string; units: Units }) {
  const yieldGPerM2 = potatoAdvice.yieldTPerHa * 100;
  return (
    <Reason ask="Phosphate, potash and magnesia for potatoes, by soil test">
      <Table
        caption={`Advised for ${name.toLowerCase()} by the index of a soil test`}
        columns={[
          { head: 'index' },
          { head: 'P₂O₅', number: true },
          { head: 'K₂O', number: true },
          { head: 'MgO', number: true },
        ]}
        rows={indices.map((index) => {
          const advice = potatoAdviceOf({ phosphorus: index, potassium: index, magnesium: index }, yieldGPerM2);
          const { phosphateMgPerM2, potashMgPerM2, magnesiaMgPerM2 } = advice;
          const cells = [phosphateMgPerM2, potashMgPerM2, magnesiaMgPerM2].map((mg) => nutrientWords(mg, units));
          return { key: String(index), cells: [index === 4 ? '4 and above' : String(index), ...cells] };
        })}
      />
      <p className="small">
        For a harvest of {formatRate(yieldGPerM2, units)} ({sourceWords(potatoAdvice.source)}). Each nutrient has an
        index of its own on the laboratory’s sheet.
      </p>
    </Reason>
  );
}
