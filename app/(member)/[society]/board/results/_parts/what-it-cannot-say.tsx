import { Sheet } from '@/app/_ui/sheet';
import type { Results } from '@/lib/usecases/notes/results-of';

/** What no comparison of this kind can say, and how to lay it beside a talk. */
export function WhatItCannotSay({ society, results }: { society: string; results: Results }) {
  const { crop, season, question, variety } = results;
  const asked = {
    crop: crop.key,
    ...(question === 'season' || season === null ? {} : { season: String(season) }),
    by: question,
    ...(variety ? { variety: variety.key } : {}),
  };
  return (
    <Sheet title="What it can’t say">
      <p>
        <strong>Why.</strong> Everybody chose for themselves how to treat their bed. Whoever double digs may also water
        more, sow earlier or have the better ground: what gave more here need not be what made it more.
      </p>
      <p>
        Few beds prove little: with four on either side, only a great difference shows at all. A trial laid out by lot
        on the beds of those who join can tell more.
      </p>
      <p className="no-print">
        To lay this beside a talk, write its address into your post; each reader then sees how it stands, with their own
        bed among it:
        <br />
        <code className="address">{`/${society}/board/results?${new URLSearchParams(asked)}`}</code>
      </p>
    </Sheet>
  );
}
