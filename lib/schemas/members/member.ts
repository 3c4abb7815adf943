import { z } from 'zod';
import { day } from '../day';
import { line, optionalEmail, optionalLine, optionalNote, ticked } from '../text';
import { form, rowId, writeId } from '../write';

const contact = {
  name: line('the member’s name'),
  email: optionalEmail(),
  phone: optionalLine('the telephone number', 30),
  postal: optionalNote('the postal address', 300),
};

export const addMemberInput = form({ writeId, ...contact, invite: ticked() });
export const changeMemberInput = form({ writeId, memberId: rowId, ...contact });
export const memberInput = form({ writeId, memberId: rowId });
export const memberLeavesInput = form({
  writeId,
  memberId: rowId,
  on: day('the last day'),
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const eraseMemberInput = form({
  writeId,
  memberId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const setRolesInput = form({
  writeId,
  memberId: rowId,
  secretary: ticked(),
  treasurer: ticked(),
  chair: ticked(),
  gate_helper: ticked(),
});
export const handOverInput = form({ writeId, memberId: rowId, keep: ticked() });
export const changeOwnDetailsInput = form({
  writeId,
  ...contact,
  units: z.enum(['metric', 'imperial'], 'Choose metres or feet.'),
});
