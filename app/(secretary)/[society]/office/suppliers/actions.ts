'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { addSupplierLoad, changeSupplierLoad, retireSupplierLoad } from '@/lib/usecases/suppliers/keep-supplier-loads';
import { addSupplier, changeSupplier, retireSupplier } from '@/lib/usecases/suppliers/keep-suppliers';

const at = (slug: string, id: string) => `/${slug}/office/suppliers/${id}`;

export async function addSupplierAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addSupplier, { slug, form, done: ({ supplierId }) => ({ redirectTo: at(slug, supplierId) }) });
}

export async function changeSupplierAction(
  slug: string,
  supplierId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeSupplier, { slug, form, fixed: { supplierId }, done: () => ({ message: 'Saved.' }) });
}

export async function retireSupplierAction(
  slug: string,
  supplierId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireSupplier, {
    slug,
    form,
    fixed: { supplierId },
    done: () => ({ redirectTo: `/${slug}/office/suppliers?retired=yes` }),
  });
}

export async function addLoadAction(
  slug: string,
  supplierId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(addSupplierLoad, {
    slug,
    form,
    fixed: { supplierId },
    done: () => ({ message: 'Added to what they bring.' }),
  });
}

export async function changeLoadAction(
  slug: string,
  supplierLoadId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeSupplierLoad, { slug, form, fixed: { supplierLoadId }, done: () => ({ message: 'Saved.' }) });
}

export async function retireLoadAction(
  slug: string,
  supplierId: string,
  supplierLoadId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireSupplierLoad, {
    slug,
    form,
    fixed: { supplierLoadId },
    // Its form leaves the page with it, so the page itself says what was done.
    done: () => ({ redirectTo: `${at(slug, supplierId)}?said=load-retired` }),
  });
}
