const marks = {
  kept: { word: 'kept', look: 'kept' },
  short: { word: 'short', look: 'short' },
  'not-known': { word: 'not known', look: 'unknown' },
  'edge-only': { word: 'edge only', look: 'kept' },
  outside: { word: 'outside the rotation', look: 'quiet' },
  bare: { word: 'bare', look: 'quiet' },
} as const;

export type MarkKind = keyof typeof marks;

/** A verdict's word in its colour; the word alone is enough. */
export function Mark({ kind, children }: { kind: MarkKind; children?: React.ReactNode }) {
  return <span className={`mark ${marks[kind].look}`}>{children ?? marks[kind].word}</span>;
}
