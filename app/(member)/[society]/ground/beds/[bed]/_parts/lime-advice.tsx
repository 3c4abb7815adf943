import { dayWords } from '@/app/_ui/delivery-words';
import { SelectField } from '@/app/_ui/field';
import { sourceWords } from '@/app/_ui/setting-words';
import { Caution, Reason, Sheet } from '@/app/_ui/sheet';
import { cautionsFor } from '@/lib/domain/catalogue/cautions';
import { limeDressings, limeWaits } from '@/lib/domain/catalogue/lime-tables';
import type { LimeReason } from '@/lib/domain/lime/lime-need';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { Feeding } from './feeding';

type Props = { feeding: Feeding; asked: Readonly<Record<string, string>> };

const grounds = [
  { value: 'sand', label: 'sand' },
  { value: 'sandy-loam', label: 'sandy loam' },
  { value: 'loam', label: 'loam' },
  { value: 'silt-loam', label: 'silt loam' },
  { value: 'clay-loam', label: 'clay loam or clay' },
  { value: 'peat', label: 'peat' },
];
const purposes = [
  { value: 'vegetables', label: 'vegetables' },
  { value: 'clubroot', label: 'brassicas where clubroot is' },
  { value: 'potatoes', label: 'potatoes, this season or next' },
];

/** How much lime a measured pH asks for, in how many dressings, and when. */
export function LimeAdvice({ feeding, asked }: Props) {
  const { lime, units } = feeding;
  return (
    <Sheet title="pH and lime">
      <form method="get" className="form" id="lime" action="#lime">
        {Object.entries(asked).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <div className="row">
          <SelectField name="texture" label="Soil" value={lime.asked.texture} choices={grounds} />
          <SelectField name="purpose" label="For" value={lime.asked.purpose} choices={purposes} />
        </div>
        <div className="field">
          <label htmlFor="lime-ph">Measured pH</label>
          <span className="short-field">
            <input
              id="lime-ph"
              name="ph"
              inputMode="decimal"
              defaultValue={lime.asked.ph}
              aria-describedby={lime.isPhWrong ? 'lime-ph-error' : 'lime-ph-hint'}
              aria-invalid={lime.isPhWrong ? true : undefined}
            />
          </span>
          <span className="hint" id="lime-ph-hint">
            in water, such as 5.8
          </span>
          {lime.isPhWrong ? (
            <p className="field-error" id="lime-ph-error">
              Give a pH from 3.0 to 9.0, with one decimal at the most.
            </p>
          ) : null}
        </div>
        <button type="submit" className="button">
          How much lime?
        </button>
      </form>
      <div style={{ marginTop: '1rem' }}>
        <LimeNeedWords lime={lime} units={units} />
        <LimeDays days={lime.days} />
      </div>
      <Caution>
        {cautionsFor(['lime'])
          .filter(({ key }) => key === 'burns' || key === 'dust' || key === 'others-know')
          .map(({ words }) => words)
          .join(' ')}
      </Caution>
    </Sheet>
  );
}

function LimeNeedWords({ lime, units }: { lime: Feeding['lime']; units: Units }) {
  const { target, need, asked } = lime;
  if (!target) return <p role="status">No lime for potatoes, nor in the year before them: it brings scab.</p>;
  const to = `pH ${ph(target.leastPhTenths)}${target.mostPhTenths > target.leastPhTenths ? ` to ${ph(target.mostPhTenths)}` : ''}`;
  if (asked.texture === 'peat')
    return (
      <p role="status">On peat the target is {to}. No table that was read covers peat: ask a laboratory how much.</p>
    );
  if (!need) return null;
  if (need.gPerM2 === 0) return <p role="status">The target is {to}: no lime is needed.</p>;
  return (
    <div role="status">
      <p>
        To {to}: <strong>{formatRate(need.gPerM2, units)}</strong> of ground limestone, {formatMassIn(need.bedG, units)}{' '}
        on this bed
        {need.dressings.length > 1
          ? `, in ${need.dressings.length} dressings a year apart: ${need.dressings.map((one) => formatRate(one, units)).join(', then ')}`
          : ''}
        .
      </p>
      <Reason ask="Why, and what others say">
        <ul className="small">
          <li>
            {sourceWords(need.source)}.{need.reasons.map((reason) => ` ${reasonWords[reason]}`).join('')} Target:{' '}
            {sourceWords(target.source)}.
          </li>
          {need.otherwise.map(({ leastGPerM2, mostGPerM2, source, reasons }) => (
            <li key={source}>
              {amountWords(leastGPerM2, mostGPerM2, units)} by {sourceWords(source)}.
              {reasons.map((reason) => ` ${reasonWords[reason]}`).join('')}
            </li>
          ))}
          <li>
            Accounts differ three- or fourfold for like soils, so one table is used and named; start low and test again.
            Above {formatRate(limeDressings.splitAboveGPerM2, units)} it is split over two years (
            {sourceWords(limeDressings.splitSource)}
            ), and no dressing is above {formatRate(limeDressings.mostGPerM2, units)} (
            {sourceWords(limeDressings.mostSource)}).
          </li>
        </ul>
      </Reason>
    </div>
  );
}

function LimeDays({ days }: { days: Feeding['lime']['days'] }) {
  const { lime, manure, test } = days;
  const day = (one: NonNullable<typeof lime>) =>
    `${dayWords(one.earliestOn)}${one.isDayKnown ? '' : ' at the latest: a day of work is not recorded'}`;
  return (
    <>
      {test ? <h3>When</h3> : null}
      <ul>
        {test ? (
          <li>{test.isOpen ? 'The pH may be tested now.' : `A pH test tells nothing before ${day(test)}.`}</li>
        ) : null}
        {lime ? (
          <li>
            {lime.isOpen ? 'Manure is long enough ago for lime.' : `Too soon after manure for lime: from ${day(lime)}.`}
          </li>
        ) : null}
        {manure ? (
          <li>
            {manure.isOpen
              ? 'Lime is long enough ago for manure.'
              : `Too soon after lime for manure: from ${day(manure)}.`}
          </li>
        ) : null}
      </ul>
      <Reason ask="Why wait?">
        <p className="small">
          Lime drives the nitrogen of manure off as ammonia. Lime first, then manure{' '}
          {limeWaits.limeThenManure.leastMonths} to {limeWaits.limeThenManure.mostMonths} months later (
          {sourceWords(limeWaits.limeThenManure.source)}; written for slurry on farms, taken over here for manure).
          After manure, lime waits for the test that says how much: not within {limeWaits.beforeTest.months} months of
          lime, fertiliser or manure ({sourceWords(limeWaits.beforeTest.source)}).
        </p>
      </Reason>
    </>
  );
}

const reasonWords: Readonly<Record<LimeReason, string>> = {
  'none-needed': 'By this account none is needed.',
  'between-rows': 'Between its rows by the straight line.',
  'beyond-table': 'Beyond its rows, carried on from the nearest.',
  'ph-lowered-from-memory': 'It goes by pH in potassium chloride, which was taken as 0.5 to 1 lower, from memory.',
  'own-target': 'It has a target of its own.',
};

function amountWords(leastGPerM2: number, mostGPerM2: number, units: Units): string {
  const words = (gPerM2: number) => (gPerM2 === 0 ? 'none' : formatRate(gPerM2, units));
  return leastGPerM2 === mostGPerM2 ? words(leastGPerM2) : `${words(leastGPerM2)} to ${words(mostGPerM2)}`;
}

function ph(tenths: number): string {
  return (tenths / 10).toFixed(1);
}
