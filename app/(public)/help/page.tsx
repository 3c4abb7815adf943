import type { Metadata } from 'next';
import { PageHead, Sheet } from '@/app/_ui/sheet';

export const metadata: Metadata = { title: 'How it works' };

export default function HelpPage() {
  return (
    <>
      <PageHead title="How it works" />
      <div className="stack wide">
        <Sheet title="Rotation is judged on ground">
          <p>
            Each planting is a rectangle of ground in whole centimetres. Whether its break is kept is read from what
            stood under that rectangle before: kept, short, or not known where no record says. A break of three allows
            onions in 2022 and again in 2026.
          </p>
          <p>
            An overlap narrower than 30 cm, or under 5 % of the planting, is an edge and does not count against the
            break: beds wander when they are dug.
          </p>
          <p>
            Where a trouble was found, none of its hosts should stand for its longer break, counted from the last of
            them or from the season in which it was seen. What is likely left of it is shown as a range, and never as an
            all-clear.
          </p>
        </Sheet>
        <Sheet title="Turn and need">
          <p>
            Ground is due its turn when it was last manured so many seasons ago as the society’s interval says, and the
            crop planned on it takes manure. Ground with no record counts for its share of each year, marked “assumed”.
            Need is due area times the dressing, divided by the weight of a barrow-load, added up over all your ground
            and rounded up once.
          </p>
        </Sheet>
        <Sheet title="The coming years">
          <p>
            Say which crops or groups you want, and on how much ground. The plan that is found breaks the fewest rules,
            by how hard they are and on how much ground; among those it gives every crop its ground; among those it
            keeps your order; among those it evens out the turns, if you ask; among those it changes little of the
            board. “Proven best” means that no plan whatever does better in that order. Where wishes clash, the smallest
            set of them that cannot be met together is named.
          </p>
        </Sheet>
        <Sheet title="Making ground ready">
          <p>
            Each crop group has a recipe: how it is dug, what goes into which spit, lime or none, and by when. The
            society may set its own, and so may you, once, for all your ground. A ground sheet puts the recipe to one
            bed: its trenches, what goes into each, which layout is less carrying, and how many sessions at your pace.
            Tick a trench when it is dug: its ground is logged and its turn reset, and the sheet remembers where you
            stopped.
          </p>
          <p>
            Nitrogen is shown beside the guidance of 250 kg a hectare in any twelve months, wherever dressings overlap.
            The old rule of half a load a trench is shown too, and how many times over it is; it never sets your need.
            What sources do not say is left open: nobody has measured how far dug ground sinks again.
          </p>
        </Sheet>
        <Sheet title="Bought-in manure">
          <p>
            Grow peas or beans in it before you trust it: pots with the manure beside pots without. The page says what
            to do on which day, and what was seen; “no symptoms seen” is no all-clear. The secretary can hold a heap
            from being shared out until it is settled. After fresh or young manure, harvests wait: the bed’s page says
            how long by each published rule.
          </p>
        </Sheet>
        <Sheet title="The store">
          <p>
            Put in what you lift as lots: one kind, one variety, one state. Each is gone over in its time, and the round
            takes one press a lot where all is sound. The store page says what to use first, and why. How long it lasts
            is told as two days between which it runs out in eight cases of ten, by the published life of its kind and
            by your own rounds; where that can’t be told, it says so. Nobody but the holders of the plot sees a store.
          </p>
        </Sheet>
        <Sheet title="Where the heap walks least">
          <p>
            Every load is wheeled from the heap to a plot along the paths, as the secretary drew them. The site’s page
            shows the place from which all of them together are wheeled least, why there is none better, and how the
            drop points compare. A site without paths is reckoned by straight lines, which is less than anybody walks.
          </p>
        </Sheet>
        <Sheet title="The share-out, with a pencil">
          <ol>
            <li>Claims stand in one order: whoever is owed most from before first; among equals, the lot decides.</li>
            <li>
              Needs come first. In the first round every claim that needs a load takes one place in the queue, in that
              order; in the second round every claim that needs two; and so on.
            </li>
            <li>Then wants, in the same way, on what is asked beyond the need.</li>
            <li>Count as many places as the heap has loads. Your share is the number of your places among them.</li>
            <li>
              Where the heap ends inside a round, everybody in that round was due an equal part of what was left. What
              you were due and did not get is your credit next time; what you got beyond it is taken off.
            </li>
          </ol>
          <p>One load more never costs anybody a load, and it makes no difference who booked first.</p>
        </Sheet>
        <Sheet title="The lot, and how far to trust it">
          <p>
            When a delivery opens, the server draws 32 bytes, shows them to nobody, and publishes their SHA-256. Closing
            freezes the bookings. The lot’s seed is the SHA-256 of those bytes followed by the list of bookings; a
            claim’s rank is the SHA-256 of the seed, a colon and the claim’s id, smallest first. The bytes are published
            with the first preview, and anybody can check all of it with any SHA-256 tool.
          </p>
          <p>
            Nobody can choose a booking to suit the lot, nor can the bytes be changed once their hash is out. Whoever
            runs the server knows the bytes from the start and could still cheat, by booking to suit them.
          </p>
        </Sheet>
        <Sheet title="Before you dig">
          <p>
            Warm up, take small spadefuls, change sides, and stop when it hurts. Wear gloves with manure and soil, keep
            dust downwind, and see that your tetanus protection is up to date. Use well-rotted manure, and ask the
            supplier about weedkiller residues. Ask your doctor, your council or your society where in doubt: this page
            replaces neither.
          </p>
        </Sheet>
      </div>
    </>
  );
}
