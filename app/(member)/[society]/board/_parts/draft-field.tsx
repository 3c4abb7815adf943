'use client';

import { useEffect, useRef } from 'react';
import { NoteField } from '@/app/_ui/field';

type Props = {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly rows?: number;
  /** Under which this device keeps what is being written. */
  readonly keep: string;
};

const prefix = 'barrowmoot draft ';

/** Several lines of text that this device keeps until they are posted, whatever becomes of the connection. */
export function DraftField({ keep, ...field }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const area = frame.current?.querySelector('textarea');
    if (!area) return undefined;
    if (area.value === '') area.value = read(keep);
    const save = () => write(keep, area.value);
    area.addEventListener('input', save);
    return () => area.removeEventListener('input', save);
  }, [keep]);
  return (
    <div ref={frame}>
      <NoteField {...field} />
    </div>
  );
}

/** Forgets a draft that was posted: its words stand on the page. */
export function DraftPosted({ keeps, bodies }: { keeps: readonly string[]; bodies: readonly string[] }) {
  useEffect(() => {
    for (const keep of keeps) if (bodies.includes(read(keep).trim().replaceAll('\r\n', '\n'))) write(keep, '');
  }, [keeps, bodies]);
  return null;
}

// A device may refuse to keep anything; then there are no drafts, and nothing else is lost.
function read(keep: string): string {
  try {
    return window.localStorage.getItem(prefix + keep) ?? '';
  } catch {
    return '';
  }
}

function write(keep: string, typed: string): void {
  try {
    if (typed) window.localStorage.setItem(prefix + keep, typed);
    else window.localStorage.removeItem(prefix + keep);
  } catch {
    // As above.
  }
}
