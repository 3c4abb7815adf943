import type { Words } from '@/app/_server/words';
import type { GroundRefusal } from '@/lib/usecases/refusals/ground';

export const groundWords: Words<GroundRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
