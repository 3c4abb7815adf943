'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { addDropPoint, changeDropPoint, retireDropPoint } from '@/lib/usecases/site/keep-drop-points';
import { addPath, changePath, retirePath } from '@/lib/usecases/site/keep-paths';

const back = (slug: string) => (reply: { siteId: string }) => ({
  redirectTo: `/${slug}/office/paths?site=${reply.siteId}`,
});

export async function addPathAction(slug: string, siteId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addPath, { slug, form, fixed: { siteId }, done: () => ({ message: 'Drawn.' }) });
}

export async function changePathAction(slug: string, pathId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changePath, { slug, form, fixed: { pathId }, done: () => ({ message: 'Changed.' }) });
}

export async function retirePathAction(slug: string, pathId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(retirePath, { slug, form, fixed: { pathId }, done: back(slug) });
}

export async function addDropPointAction(
  slug: string,
  siteId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const done = () => ({ message: 'Made. A load can be tipped there from now on.' });
  return submitForm(addDropPoint, { slug, form, fixed: { siteId }, done });
}

export async function changeDropPointAction(
  slug: string,
  dropPointId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeDropPoint, { slug, form, fixed: { dropPointId }, done: () => ({ message: 'Changed.' }) });
}

export async function retireDropPointAction(
  slug: string,
  dropPointId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireDropPoint, { slug, form, fixed: { dropPointId }, done: back(slug) });
}
