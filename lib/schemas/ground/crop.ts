import { z } from 'zod';
import { isCropGroup } from '@/lib/domain/catalogue/crop-groups';
import { isHostGroup } from '@/lib/domain/catalogue/host-groups';
import { line, optionalLine, ticked } from '../text';
import { form, writeId } from '../write';

export const saveCropInput = form({
  writeId,
  key: optionalLine('the crop', 60),
  name: line('the crop’s name', 60),
  binomial: optionalLine('the botanical name', 80),
  family: line('the botanical family', 60),
  cropGroup: z.string({ error: 'Choose a group.' }).refine(isCropGroup, 'Choose a group.'),
  hostGroup: z
    .union([z.literal(''), z.string().refine(isHostGroup, 'Choose its kin.')], { error: 'Choose its kin.' })
    .default(''),
  life: z.enum(['annual', 'biennial', 'perennial'], 'Choose how long it lives.'),
  takesManure: ticked(),
});
