import { dayWords } from '@/app/_ui/delivery-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Caution, Reason, Sheet } from '@/app/_ui/sheet';
import { clashWords, waitWords } from '@/app/_ui/work-words';
import type { Eaten, SoilContact } from '@/lib/domain/catalogue/contact';
import { percent } from '@/lib/domain/quantity/area';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import type { ToldWait } from '@/lib/usecases/ground/food-and-lime';
import type { Feeding } from './feeding';

const contactWords: Readonly<Record<SoilContact, string>> = {
  'touches-soil': 'lies in or on the soil',
  splashed: 'is reached by what rain splashes up, which counts as touching the soil',
  clear: 'stays clear of the soil',
};
const eatenWords: Readonly<Record<Eaten, string>> = {
  raw: 'eaten raw',
  either: 'often eaten raw, so taken as raw',
  cooked: 'eaten cooked',
};
const stateWords = { raw: 'fresh', young: 'young', rotted: 'rotted', composted: 'composted' } as const;

const ruleWords: Readonly<Record<string, string>> = {
  'organic-contact': '120 days from manure to harvest, where the eaten part touches the soil',
  'organic-clear': '90 days from manure to harvest, where it does not',
  'food-agency-fresh': 'six months from fresh manure to what is eaten raw',
  'food-agency-treated': 'two months from rotted or composted manure to what is eaten raw',
  'food-agency-present': 'twelve months from fresh manure to what is eaten raw (shown only: it sets no date here)',
  'year-of-rot': 'a year’s rot in heap and ground together, for what is eaten raw',
};

/** Harvests that have to wait for manure, and lime that came too near to it; nothing where all is well. */
export function HarvestWaits({ waits, clashes }: Pick<Feeding, 'waits' | 'clashes'>) {
  if (waits.length === 0 && clashes.length === 0) return null;
  return (
    <Sheet title={waits.length ? 'Harvests that have to wait' : 'Lime and manure came too close'}>
      {waits.map((wait) => (
        <WaitLine key={wait.plantingId} wait={wait} />
      ))}
      {clashWords(clashes).map((words) => (
        <p key={words}>{words}</p>
      ))}
      {waits.length ? <HarvestCaution /> : null}
    </Sheet>
  );
}

/** One crop’s wait: the day, and why. */
export function WaitLine({ wait }: { wait: ToldWait }) {
  const { meeting, manurings, areaCm2: touchedCm2, footprint } = wait;
  return (
    <div>
      <p>
        {wait.isWorstCase ? (
          <span className="mark unknown">not known</span>
        ) : (
          <span className="mark short">not yet</span>
        )}{' '}
        {wait.isWorstCase ? waitWords(wait) : <strong>{waitWords(wait)}</strong>} Manure lies under{' '}
        {percent(touchedCm2, areaCm2(footprint))} of it.
      </p>
      <Reason ask={`Why ${dayWords(wait.earliestOn)}?`}>
        <p className="small">
          {meeting
            ? `What is eaten of it ${contactWords[meeting.contact]}; it is ${eatenWords[meeting.eaten]}.`
            : 'How this crop meets the soil is not in the catalogue, so it is taken as touching it and eaten raw.'}
        </p>
        {manurings.map((manuring) => (
          <Manuring key={manuring.id} manuring={manuring} />
        ))}
      </Reason>
    </div>
  );
}

function Manuring({ manuring }: { manuring: ToldWait['manurings'][number] }) {
  const { manuredOn, isDayKnown, state, monthsHeaped, rules, reasons } = manuring;
  const age =
    monthsHeaped === null && state === 'raw' ? 'of an age that is not recorded, so taken as fresh' : stateWords[state];
  return (
    <div className="small">
      <p>
        {isDayKnown
          ? `Manure of ${dayWords(manuredOn)}, ${age}.`
          : `Manure, ${age}. Its day is not recorded, so it is counted from the latest that it can have been, ${dayWords(manuredOn)}.`}
        {reasons.includes('laid-on-the-surface') ? ' It lies on top; the waits are written for manure dug in.' : ''}
      </p>
      <ul>
        {rules.map(({ key, earliestOn, source }) => (
          <li key={key}>
            {dayWords(earliestOn)}: {ruleWords[key] ?? key} <span className="soft">({sourceWords(source)})</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What is said wherever a harvest’s day stands. */
export function HarvestCaution() {
  return (
    <Caution>
      Guidance, and no guarantee: manure can carry germs that make people ill. Wash what you harvest, and cook it for
      small children, the old, the pregnant and the sick. The rules of your society and the advice of the Food Standards
      Agency go before this.
    </Caution>
  );
}
