import type { Words } from './shape';
import type { MembersRefusal } from '@/lib/usecases/refusals/members';

export const membersWords: Words<MembersRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
