import { z } from 'zod';
import { isCropGroup } from '@/lib/domain/catalogue/crop-groups';
import { isHostGroup } from '@/lib/domain/catalogue/host-groups';
import { line, optionalLine, ticked } from '../text';
import { writeId } from '../write';

export const saveCropInput = z.strictObject({
  writeId,
  key: optionalLine('the crop', 60),
  name: line('the crop’s name', 60),
  binomial: optionalLine('the botanical name', 80),
  family: line('the botanical family', 60),
  cropGroup: z.string().refine(isCropGroup, 'Choose a group.'),
  hostGroup: z.union([z.literal(''), z.string().refine(isHostGroup, 'Choose its kin.')]).default(''),
  life: z.enum(['annual', 'biennial', 'perennial'], 'Choose how long it lives.'),
  takesManure: ticked(),
});
