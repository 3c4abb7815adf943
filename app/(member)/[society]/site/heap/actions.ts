'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { tipAt } from '@/lib/usecases/deliveries/tip-at';
import { addDropPoint } from '@/lib/usecases/site/keep-drop-points';

/** What the page was asked when it served the form; the delivery whose loads it shows, where that can still be sent elsewhere. */
type Here = { readonly site: string; readonly loads: string; readonly allowed: string };

// What is done takes its form off the page, so the page itself says it.
const saying = (slug: string, here: Here, said: string) => () => ({
  redirectTo: `/${slug}/site/heap?${new URLSearchParams({ ...here, said })}`,
});

/** Make the place that was found a drop point; a box ticked beside it sends the delivery there too. */
export async function makeDropPointAction(
  slug: string,
  here: Here,
  at: { xCm: number; yCm: number },
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const isSent = form.get('tip') === 'yes';
  form.delete('tip');
  const place = { siteId: here.site, east: `${at.xCm} cm`, south: `${at.yCm} cm` };
  return submitForm(addDropPoint, {
    slug,
    form,
    fixed: { ...place, deliveryId: isSent ? here.loads : '' },
    done: saying(slug, here, isSent ? 'made-and-sent' : 'made'),
  });
}

export async function tipAtAction(slug: string, here: Here, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(tipAt, { slug, form, fixed: { deliveryId: here.loads }, done: saying(slug, here, 'sent') });
}
