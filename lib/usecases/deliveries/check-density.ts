import 'server-only';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { refuse } from '../refusal';

/** Refuse a density that is far from everything published of the material: under half of the least, over twice the most. */
export function checkDensity(materialKey: string, densityGPerL: number, field: string): void {
  const material = materialOf(materialKey);
  if (!material) refuse('material-unknown', { field: 'materialKey' });
  const [least, most] = [Math.floor(material.leastGPerL / 2), material.mostGPerL * 2];
  if (densityGPerL < least || densityGPerL > most) refuse('density-out-of-range', { field, numbers: { least, most } });
}
