import type { SuppliersRefusal } from '@/lib/usecases/refusals/suppliers';
import type { Words } from './shape';

export const suppliersWords: Words<SuppliersRefusal> = {
  'supplier-name-taken': () => 'There is a supplier of that name already. Change that one, or give another name.',
  'trailer-size-missing': () => 'Say how many litres the trailer holds; a cubic metre is 1,000.',
  'bale-weight-missing': () => 'Say what a bale weighs in kilograms; ask whoever sells it.',
};
