'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { saySharing } from '@/lib/usecases/notes/say-sharing';

export async function sharingAction(
  slug: string,
  holdingId: string,
  shares: 'yes' | 'no',
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const done = () => ({ redirectTo: `/${slug}/board/results/sharing` });
  return submitForm(saySharing, { slug, form, fixed: { holdingId, shares }, done });
}
