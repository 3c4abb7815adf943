import { useId } from 'react';
import type { Drawing, PartKind } from '@/lib/domain/trench/drawing';
import { SoilHatches, soilFill, soilName } from './soil-hatches';

// From the ground as it lay to what is laid into it.
const inOrder: readonly PartKind[] = [
  'undug',
  'topsoil',
  'subsoil',
  'forked',
  'manure-bottom',
  'manure-top',
  'straw',
  'open',
  'heap',
  'folded',
];

/** The key to drawings: each hatch that stands in them, and its word. */
export function TrenchKey({ drawings }: { drawings: readonly Drawing[] }) {
  const id = useId().replaceAll(':', '');
  const present = new Set(drawings.flatMap(({ parts }) => parts.map(({ kind }) => kind)));
  const kinds = [...present].sort((a, b) => inOrder.indexOf(a) - inOrder.indexOf(b));
  return (
    <ul className="key trench-key">
      {kinds.map((kind, at) => (
        <li key={kind}>
          <svg className="trench" viewBox="0 0 38 22" aria-hidden="true">
            {at === 0 ? <SoilHatches kinds={kinds} size={10} prefix={id} /> : null}
            <rect className={`part ${kind}`} width="38" height="22" fill={soilFill(kind, id)} />
          </svg>
          {soilName(kind)}
        </li>
      ))}
    </ul>
  );
}
