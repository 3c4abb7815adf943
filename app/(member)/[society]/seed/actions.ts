'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { changeSowing } from '@/lib/usecases/seed/change-sowing';
import { keepOrderedSeed } from '@/lib/usecases/seed/hand-out';
import { addPacket, changePacket, finishPacket, takeBackPacket, usePacket } from '@/lib/usecases/seed/keep-packets';
import { wantSeed } from '@/lib/usecases/seed/want-seed';

const count = (seeds: number) => `${seeds.toLocaleString('en-GB')} ${seeds === 1 ? 'seed' : 'seeds'}`;

export async function sowAction(slug: string, cropKey: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeSowing, {
    slug,
    form,
    fixed: { cropKey },
    done: ({ isOwn }) => ({ message: isOwn ? 'Kept: it is worked out your way now.' : 'Put back: it is as printed.' }),
  });
}

export async function addPacketAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(addPacket, {
    slug,
    form,
    fixed: { holdingId },
    done: ({ seeds, fewest, most }) => ({
      message: `In the tin: ${count(seeds)}${fewest < most ? `; by other accounts ${fewest.toLocaleString('en-GB')} to ${most.toLocaleString('en-GB')}` : ''}.`,
    }),
  });
}

export async function changePacketAction(
  slug: string,
  packetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changePacket, {
    slug,
    form,
    fixed: { packetId },
    done: ({ seeds }) => ({ message: `Corrected: ${count(seeds)} left.` }),
  });
}

export async function usePacketAction(
  slug: string,
  packetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(usePacket, {
    slug,
    form,
    fixed: { packetId },
    done: ({ left }) => ({ message: left ? `Used. ${count(left)} left.` : 'Used up.' }),
  });
}

export async function finishPacketAction(
  slug: string,
  packetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(finishPacket, { slug, form, fixed: { packetId }, done: () => ({ message: 'Used up.' }) });
}

export async function takeBackPacketAction(
  slug: string,
  packetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(takeBackPacket, { slug, form, fixed: { packetId }, done: () => ({ message: 'Taken back.' }) });
}

export async function wantAction(
  slug: string,
  orderId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(wantSeed, {
    slug,
    form,
    shape: ({ writeId, ...typed }) => ({
      writeId,
      wants: Object.entries(typed).flatMap(([name, amount]) =>
        name.startsWith('amount:') ? [{ itemId: name.slice('amount:'.length), amount }] : [],
      ),
    }),
    fixed: { orderId, holdingId },
    done: ({ items }) => ({
      message: items
        ? `Put down: ${items} ${items === 1 ? 'thing' : 'things'}. You can change it until the list closes.`
        : 'Nothing of it is wanted.',
    }),
  });
}

export async function keepInTinAction(
  slug: string,
  orderId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(keepOrderedSeed, {
    slug,
    form,
    fixed: { orderId, holdingId },
    done: ({ packets }) => ({ message: `In the tin: ${packets} ${packets === 1 ? 'packet' : 'packets'}.` }),
  });
}
