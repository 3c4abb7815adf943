import { z } from 'zod';
import { isSettingKey } from '@/lib/domain/catalogue/settings';
import { day } from '../day';
import { writeId } from '../write';

export const changeSettingInput = z.strictObject({
  writeId,
  key: z.string().refine(isSettingKey, 'There is no such rule.'),
  value: z.string().trim().max(40, 'That is too long for a value.'),
  from: day('the day from which the rule holds'),
});
