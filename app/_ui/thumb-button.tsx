'use client';

import { type ReactNode, useEffect, useState } from 'react';
import { useFormStatus } from 'react-dom';

/** After what it does has changed, a second tap of the same thumb does nothing for so long [ms]. */
const restMs = 700;

/** The one button of a page that is worked with a gloved thumb. Sent once; and a double tap ticks no second trench. */
export function ThumbButton({
  does,
  justDone = false,
  children,
}: {
  does: string;
  /** The page came of such a press, so that this button may lie under the second tap of it. */
  justDone?: boolean;
  children: ReactNode;
}) {
  const { pending } = useFormStatus();
  const [last, setLast] = useState(does);
  const [rests, setRests] = useState(false);
  if (last !== does) {
    setLast(does);
    setRests(true);
  }
  useEffect(() => {
    if (!justDone) return undefined;
    const timer = setTimeout(() => setRests(true), 0);
    return () => clearTimeout(timer);
  }, [justDone]);
  useEffect(() => {
    if (!rests) return undefined;
    const timer = setTimeout(() => setRests(false), restMs);
    return () => clearTimeout(timer);
  }, [rests, last]);
  const isHeld = pending || rests;
  return (
    <button
      type="submit"
      className="button first big"
      aria-disabled={isHeld}
      onClick={(event) => isHeld && event.preventDefault()}
    >
      {pending ? 'One moment …' : children}
    </button>
  );
}
