import { dayWords } from '@/app/_ui/delivery-words';
import { nutrientWords } from '@/app/_ui/nutrient-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason } from '@/app/_ui/sheet';
import { hectareLimit } from '@/lib/domain/catalogue/nitrogen-limits';
import type { RateWithin } from '@/lib/domain/nutrients/rate-within';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import type { Feeding } from './feeding';
import { workName } from './work-names';

/** How the nitrogen brought on stands to the guidance, for a year and over the rotation, and the rate that keeps it. */
export function NitrogenGuidance({ feeding, bedCm2 }: { feeding: Feeding; bedCm2: number }) {
  const { nitrogen, units, barrowLoadG, dressingRateGPerM2 } = feeding;
  const { materialKey, now, clearYear, overRotation, intervalYears, hadMgPerM2, isHadKnown } = nitrogen;
  const name = workName('manured', materialKey);
  const rate = (within: RateWithin | null) => withinWords(within, bedCm2, barrowLoadG, units);
  return (
    <>
      <h3>Nitrogen against the guidance</h3>
      {nitrogen.isRecorded ? <Standing nitrogen={nitrogen} units={units} /> : null}
      <p>The rate of {name} that keeps it:</p>
      <ul>
        <li>in a year that brings nothing else, up to {rate(clearYear)};</li>
        {hadMgPerM2 > 0 || !isHadKnown ? (
          <li>
            today, after the last twelve months{isHadKnown ? '' : ' as far as they are known'}: {rate(now)};
          </li>
        ) : null}
        <li>
          as the one dressing in {intervalYears} years, {rate(overRotation)}: on the average it keeps, in its year it
          does not.
        </li>
      </ul>
      <p className="small soft">The society’s dressing is {formatRate(dressingRateGPerM2, units)}.</p>
      <Reason ask="Why, and for whom?">
        <p className="small">
          {hectareLimit.kgPerHa} kg of nitrogen a hectare ({nutrientWords(hectareLimit.kgPerHa * 100, units)}) from all
          organic manures in any twelve months, on any hectare ({sourceWords(hectareLimit.source)}). It is English law
          for farms in designated zones; whether it binds an allotment is a question for a lawyer, so here it is
          guidance. More than crops can use washes out into ground water.
        </p>
        {clearYear ? (
          <p className="small">
            Reckoned with {(clearYear.nitrogenGPerT / 1000).toLocaleString('en-GB')} kg of nitrogen in a tonne (
            {sourceWords(clearYear.source)}).
          </p>
        ) : null}
      </Reason>
    </>
  );
}

function Standing({ nitrogen, units }: { nitrogen: Feeding['nitrogen']; units: Units }) {
  const { worstMgPerM2, timesLimit, overCm2, unknownCm2, limitMgPerM2, from, through, intervalYears } = nitrogen;
  const { worstMeanMgPerM2, bedMeanMgPerM2 } = nitrogen;
  const limit = nutrientWords(limitMgPerM2, units);
  const span =
    from && through ? (from === through ? ` (${dayWords(from)})` : ` (${dayWords(from)} to ${dayWords(through)})`) : '';
  return (
    <>
      {worstMgPerM2 > 0 || unknownCm2 === 0 ? (
        <>
          <p>
            {overCm2 > 0 ? <span className="mark short">over</span> : null} The heaviest twelve months{span} brought{' '}
            {nutrientWords(worstMgPerM2, units)} in all:{' '}
            {overCm2 > 0
              ? `${times(timesLimit)} the ${limit} of the guidance, which is passed on ${formatArea(overCm2, units)}.`
              : `within the ${limit} of the guidance.`}
          </p>
          <p>
            Over {intervalYears} years that makes {nutrientWords(worstMeanMgPerM2, units)} a year where it lies
            thickest, {times(worstMeanMgPerM2 / limitMgPerM2)} the guidance, and {nutrientWords(bedMeanMgPerM2, units)}{' '}
            on the whole bed.
          </p>
        </>
      ) : null}
      {unknownCm2 > 0 ? (
        <p>
          <span className="mark unknown">not known</span> On {formatArea(unknownCm2, units)} an amount or a material is
          not recorded, so it may be more.
        </p>
      ) : null}
    </>
  );
}

function times(value: number): string {
  return `${value.toLocaleString('en-GB', { maximumFractionDigits: 1 })} times`;
}

function withinWords(within: RateWithin | null, bedCm2: number, barrowLoadG: number, units: Units): string {
  if (!within) return 'a rate that is not known';
  if (within.rateGPerM2 === 0) return 'nothing more';
  const loads = Math.floor((within.rateGPerM2 * bedCm2) / 10_000 / barrowLoadG);
  const barrows = loads === 0 ? 'under a barrow-load' : loads === 1 ? 'one barrow-load' : `${loads} barrow-loads`;
  return `${formatRate(within.rateGPerM2, units)} (${barrows} on this bed)`;
}
