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
import { readOwnDetails, readStanding } from '@/lib/usecases/members/read-standing';
import { changeSetting, readSettings } from '@/lib/usecases/settings/settings';
import { once } from '../../fixtures/society';
import { committee, everybody, type Row, secretary } from '../row';

const day = '2026-06-01';

export const members: readonly Row[] = [
  { operation: readStanding, input: () => ({}), allow: everybody },
  { operation: readOwnDetails, input: () => ({}), allow: everybody },
  { operation: listMembers, input: () => ({}), allow: committee },
  { operation: readMember, input: ({ holderId }) => ({ memberId: holderId }), allow: secretary },
  { operation: readBook, input: ({ holderId }) => ({ member: holderId }), allow: committee, idIsFilter: true },
  { operation: readSettings, input: () => ({}), allow: everybody },
  {
    operation: changeSetting,
    input: () => once({ key: 'barrowLitres', value: '90', from: '2199-01-01' }),
    allow: secretary,
  },
  { operation: addMember, input: () => once({ name: 'Somebody', email: '', phone: '', postal: '' }), allow: secretary },
  {
    operation: changeMember,
    input: ({ holderId }) => once({ memberId: holderId, name: 'Another', email: '', phone: '', postal: '' }),
    allow: secretary,
  },
  {
    operation: changeOwnDetails,
    input: () => once({ name: 'Me', email: '', phone: '', postal: '', units: 'metric' }),
    allow: everybody,
  },
  { operation: inviteMember, input: ({ noAccountId }) => once({ memberId: noAccountId }), allow: secretary },
  { operation: withdrawInvitation, input: ({ invitedId }) => once({ memberId: invitedId }), allow: secretary },
  {
    operation: memberLeaves,
    input: ({ spareMemberId }) => once({ memberId: spareMemberId, on: day, sure: 'yes' }),
    allow: secretary,
  },
  {
    operation: eraseMember,
    input: ({ leftMemberId }) => once({ memberId: leftMemberId, sure: 'yes' }),
    allow: secretary,
  },
  { operation: setMemberRoles, input: ({ holderId }) => once({ memberId: holderId, chair: 'yes' }), allow: secretary },
  { operation: handOver, input: ({ holderId }) => once({ memberId: holderId, keep: 'yes' }), allow: secretary },
];
