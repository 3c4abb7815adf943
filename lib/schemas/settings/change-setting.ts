import { z } from 'zod';
import { isSettingKey } from '@/lib/domain/catalogue/settings';
import { day } from '../day';
import { form, writeId } from '../write';

export const changeSettingInput = form({
  writeId,
  key: z.string({ error: 'There is no such rule.' }).refine(isSettingKey, 'There is no such rule.'),
  value: z.string({ error: 'Give one value.' }).trim().max(40, 'That is too long for a value.'),
  from: day('the day from which the rule holds'),
});
