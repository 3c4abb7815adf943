import { Sheet } from '@/app/_ui/sheet';

/** What is shared, with whom, what never is, and what it can still give away. */
export function WhatIsShared() {
  return (
    <Sheet title="What you agree to">
      <dl>
        <dt>What is told</dt>
        <dd>
          what each square metre of a bed gave, to two figures, beside how it was dug, manured and sown, its variety,
          and when its group last stood there
        </dd>
        <dt>To whom</dt>
        <dd>members of this society, the committee no more than others; nobody outside</dd>
        <dt>In what company</dt>
        <dd>only among the beds of three neighbours or more, by size; of fewer, nothing</dd>
        <dt>Never</dt>
        <dd>your name, the number of your plot, the names of your beds, your notes, your store, single harvests</dd>
        <dt>From when</dt>
        <dd>
          at once, and for earlier seasons of this holding too, till you take it back; whoever takes over your ground is
          asked anew
        </dd>
      </dl>
      <h3>What it can still give away</h3>
      <p>
        Beds have no names there, but neighbours have eyes. Whoever knows how you dug, manured and sowed can look at one
        comparison after another and guess which ring is yours; and whoever looks the day before you agree and the day
        after sees which is new. If that troubles you, don’t agree: your own beds stand beside the others for you all
        the same.
      </p>
    </Sheet>
  );
}
