import { readBook } from '@/lib/usecases/book/read-book';
import { inviteMember, withdrawInvitation } from '@/lib/usecases/members/invite-member';
import {
  addMember,
  changeMember,
  changeOwnDetails,
  eraseMember,
  memberLeaves,
} from '@/lib/usecases/members/keep-members';
import { listMembers, readMember } from '@/lib/usecases/members/list-members';
import { handOver, setMemberRoles } from '@/lib/usecases/members/offices';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { changeSetting, readSettings } from '@/lib/usecases/settings/settings';
import { once } from '../../fixtures/society';
import type { Row } from '../deny';

const all = ['member', 'treasurer', 'gate_helper'] as const;
const day = '2026-06-01';

export const members: readonly Row[] = [
  { operation: readStanding, input: () => ({}), deny: [] },
  { operation: listMembers, input: () => ({}), deny: ['member', 'gate_helper'] },
  { operation: readMember, input: ({ memberId }) => ({ memberId }), deny: all },
  { operation: readBook, input: () => ({}), deny: ['member', 'gate_helper'] },
  { operation: readSettings, input: () => ({}), deny: [] },
  { operation: changeSetting, input: () => once({ key: 'barrowLitres', value: '90', from: '2199-01-01' }), deny: all },
  { operation: addMember, input: () => once({ name: 'Somebody', email: '', phone: '', postal: '' }), deny: all },
  {
    operation: changeMember,
    input: ({ memberId }) => once({ memberId, name: 'Another', email: '', phone: '', postal: '' }),
    deny: all,
  },
  {
    operation: changeOwnDetails,
    input: () => once({ name: 'Me', email: '', phone: '', postal: '', units: 'metric' }),
    deny: [],
  },
  { operation: inviteMember, input: ({ leftMemberId }) => once({ memberId: leftMemberId }), deny: all },
  { operation: withdrawInvitation, input: ({ leftMemberId }) => once({ memberId: leftMemberId }), deny: all },
  { operation: memberLeaves, input: ({ memberId }) => once({ memberId, on: day, sure: 'yes' }), deny: all },
  { operation: eraseMember, input: ({ leftMemberId }) => once({ memberId: leftMemberId, sure: 'yes' }), deny: all },
  { operation: setMemberRoles, input: ({ memberId }) => once({ memberId, chair: 'yes' }), deny: all },
  { operation: handOver, input: ({ memberId }) => once({ memberId, keep: 'yes' }), deny: all },
];
