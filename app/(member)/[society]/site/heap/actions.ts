'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { tipAt } from '@/lib/usecases/deliveries/tip-at';
import { addDropPoint } from '@/lib/usecases/site/keep-drop-points';

/** Make the place that was found a drop point; a box ticked beside it sends the delivery there too. */
export async function makeDropPointAction(
  slug: string,
  place: { siteId: string; xCm: number; yCm: number; deliveryId: string | null },
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const { siteId, deliveryId, xCm, yCm } = place;
  const isSent = deliveryId && form.get('tip') === 'yes';
  form.delete('tip');
  const fixed = { siteId, east: `${xCm} cm`, south: `${yCm} cm`, deliveryId: isSent ? deliveryId : '' };
  const message = isSent ? 'Made, and the delivery is to be tipped there. Whoever booked is told.' : 'Made.';
  return submitForm(addDropPoint, { slug, form, fixed, done: () => ({ message }) });
}

export async function tipAtAction(
  slug: string,
  to: { deliveryId: string; dropPointId: string },
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const done = () => ({ message: 'It is to be tipped there. Whoever booked is told.' });
  return submitForm(tipAt, { slug, form, fixed: to, done });
}
