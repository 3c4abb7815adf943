'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { changeStanding, endStanding, startStanding } from '@/lib/usecases/deliveries/standing-bookings';

export async function startStandingAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(startStanding, {
    slug,
    form,
    fixed: { holdingId },
    done: () => ({ message: 'It stands. From the next delivery on it books by itself, and you are told each time.' }),
  });
}

export async function changeStandingAction(
  slug: string,
  standingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeStanding, {
    slug,
    form,
    fixed: { standingId },
    done: () => ({ message: 'Changed, from the next delivery on. What it has booked stays.' }),
  });
}

export async function endStandingAction(
  slug: string,
  standingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(endStanding, {
    slug,
    form,
    fixed: { standingId },
    done: () => ({ message: 'Ended. What it has booked stays; withdraw that on the delivery’s page.' }),
  });
}
