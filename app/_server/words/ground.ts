import type { Words } from './shape';
import type { GroundRefusal } from '@/lib/usecases/refusals/ground';

export const groundWords: Words<GroundRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
