'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { makeFeed, revokeFeed } from '@/lib/usecases/reminders/calendar-feed';
import { chooseWeeklyLetter } from '@/lib/usecases/reminders/letter-wish';

export async function makeFeedAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  const done = ({ address }: { address: string }) => ({
    message: `Your calendar’s address, shown this once: ${address}`,
  });
  return submitForm(makeFeed, { slug, form, done });
}

export async function revokeFeedAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  // Its form leaves the page with it, so the page itself says what was done.
  return submitForm(revokeFeed, { slug, form, done: () => ({ redirectTo: `/${slug}/me/reminders?said=taken-back` }) });
}

export async function letterAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  const done = ({ wanted }: { wanted: boolean }) => ({
    message: wanted ? 'The weekly letter comes from next Monday on.' : 'The weekly letter comes no more.',
  });
  return submitForm(chooseWeeklyLetter, { slug, form, done });
}
