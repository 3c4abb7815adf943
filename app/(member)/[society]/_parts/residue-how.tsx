import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { bioassayProtocols, bioassayRules } from '@/lib/domain/catalogue/bioassay-protocols';
import { citation } from '@/lib/domain/catalogue/sources';

const { leastTestPots, leastControlPots, leastSeedsAPot, trueLeaves, enoughDays, lastDay } = bioassayRules;

/** How a test is done, what it cannot say, and where all of it comes from. */
export function HowItIsDone() {
  return (
    <Sheet title="How it is done">
      <ol>
        <li>
          Take manure from several places in the heap, and mix it with potting mix that you trust: one part to one, or
          two to one.
        </li>
        <li>
          Fill {leastTestPots} pots or more of 10 to 13 cm with it, and {leastControlPots} or more with the mix alone.
          Mark them, and give each a saucer of its own, so that no water runs from one to another.
        </li>
        <li>Sow {leastSeedsAPot} peas or beans in each. Keep all of them alike, in the light and warm.</li>
        <li>
          Read every pot once a week: how many are up, how many have cupped, curled or fern-like leaves, and how many
          sets of true leaves the plant furthest behind has.
        </li>
        <li>
          It is over when all have {trueLeaves} sets of true leaves, or after {enoughDays} to {lastDay} days.
        </li>
      </ol>
      <Reason ask="What it cannot say">
        <p>
          Symptoms need not be weedkiller: salt, and manure that has not rotted, can make plants look the same. Where
          the plants without manure fail too, the test says nothing. ({citation('calrecycle-bioassay')})
        </p>
        <p>
          And where nothing is seen, that goes for what was in the pots: residues differ from place to place in a heap.
        </p>
        <p>
          If some of it is in your ground already: residues are found to be at their height about three weeks after
          digging in and to fall from then on, and ground is usually fit to plant again by the next spring. Potatoes,
          tomatoes, beans and peas show it first. ({citation('rhs-weedkiller')})
        </p>
      </Reason>
      <Reason ask="Where this comes from">
        <Table
          caption="Published ways to do it"
          columns={[{ head: 'manure to mix' }, { head: 'pots' }, { head: 'days' }, { head: 'source' }]}
          rows={bioassayProtocols.map(({ key, manureParts, mixParts, testPots, fromDay, toDay, source }) => ({
            key,
            cells: [
              `${manureParts} to ${mixParts}${key === 'three-to-one' ? ', thought too strong by its reviewers' : ''}`,
              testPots ?? 'not given',
              fromDay === null ? 'not given' : `${fromDay} to ${toDay}`,
              sourceWords(source),
            ],
          }))}
        />
        <p className="small">
          Weekly readings, {leastControlPots} pots without manure, and half of the seeds coming up are common practice.
        </p>
      </Reason>
    </Sheet>
  );
}
