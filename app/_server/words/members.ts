import type { Words } from '@/app/_server/words';
import type { MembersRefusal } from '@/lib/usecases/refusals/members';

export const membersWords: Words<MembersRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
