import { z } from 'zod';
import { day } from '../day';
import { line, optionalEmail, optionalLine, optionalNote, ticked } from '../text';
import { rowId, writeId } from '../write';

const contact = {
  name: line('the member’s name'),
  email: optionalEmail(),
  phone: optionalLine('the telephone number', 30),
  postal: optionalNote('the postal address', 300),
};

export const addMemberInput = z.strictObject({ writeId, ...contact, invite: ticked() });
export const changeMemberInput = z.strictObject({ writeId, memberId: rowId, ...contact });
export const memberInput = z.strictObject({ writeId, memberId: rowId });
export const memberLeavesInput = z.strictObject({
  writeId,
  memberId: rowId,
  on: day('the last day'),
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const eraseMemberInput = z.strictObject({
  writeId,
  memberId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const setRolesInput = z.strictObject({
  writeId,
  memberId: rowId,
  secretary: ticked(),
  treasurer: ticked(),
  chair: ticked(),
  gate_helper: ticked(),
});
export const handOverInput = z.strictObject({ writeId, memberId: rowId, keep: ticked() });
export const changeOwnDetailsInput = z.strictObject({
  writeId,
  ...contact,
  units: z.enum(['metric', 'imperial'], 'Choose metres or feet.'),
});
