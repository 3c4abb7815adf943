import { formatMass } from '@/lib/domain/quantity/load';
import { loadMassG, type LoadSize } from '@/lib/domain/quantity/load-mass';

// What two people can be asked to carry between them; the guideline for one man, close to the body, is 25 kg.
const byHandG = 50_000;

/** What a load weighs, and how to move it without harm. */
export function LoadCaution({ load }: { load: LoadSize }) {
  const massG = loadMassG(load);
  const mass = formatMass(massG);
  if (load.loadUnit !== 'bale')
    return `A barrow-load of this weighs about ${mass}. Bend your knees, push rather than pull, and take half-loads where a full one strains you; gloves on, dust downwind, and wash your hands before you eat.`;
  if (massG > byHandG)
    return `A bale weighs about ${mass}: it is not lifted or rolled by hand. Keep clear while it is set down, never climb a stack, and carry it away loose by the barrow; gloves on, dust downwind.`;
  return `A bale weighs about ${mass}; damp, it weighs more. Bend your knees, keep it close, take it by both strings, and let two carry it where it strains you; gloves on, dust downwind.`;
}
