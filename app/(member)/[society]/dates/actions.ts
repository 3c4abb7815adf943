'use server';

import { submitForm } from '@/app/_server/form-action';
import { dayWords } from '@/app/_ui/delivery-words';
import type { FormState } from '@/app/_ui/form-state';
import { recordDay } from '@/lib/usecases/dates/record-day';

/** Record that a planting was sown, planted or cleared on a day. */
export async function recordDayAction(
  slug: string,
  plantingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const [what, onDay] = [String(form.get('what')), String(form.get('onDay'))];
  return submitForm(recordDay, {
    slug,
    form,
    fixed: { plantingId },
    done: ({ cropName }) => ({ message: `${cropName}: ${what} on ${dayWords(onDay)}. It is recorded.` }),
  });
}
