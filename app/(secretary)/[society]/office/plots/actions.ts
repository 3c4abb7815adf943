'use server';

import { lookThenSubmit, submitForm } from '@/app/_server/form-action';
import { withTableFile } from '@/app/_server/table-file';
import type { FormState } from '@/app/_ui/form-state';
import { formatRods } from '@/lib/domain/quantity/area';
import type { PlotRow } from '@/lib/schemas/plots/plots-csv';
import { importPlots, lookAtPlots } from '@/lib/usecases/plots/import-plots';
import { halvePlot, joinPlots } from '@/lib/usecases/plots/halve-and-join';
import { addPlot, addSite, drawPlot } from '@/lib/usecases/plots/keep-plots';
import { changeHolders, endTenancy, letPlot, nameBooker } from '@/lib/usecases/plots/keep-tenancies';

export async function addSiteAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addSite, { slug, form, done: () => ({ message: 'Added.' }) });
}

export async function addPlotAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addPlot, { slug, form, done: () => ({ message: 'Added. It can be drawn and let now.' }) });
}

export async function importPlotsAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  const preview = (rows: PlotRow[]) => ({
    columns: ['line', 'plot', 'size', 'holders', 'from'],
    rows: rows.map(({ line, number, quarterRods, holders, fromOn }) => [
      String(line),
      number,
      formatRods(quarterRods),
      holders.map(({ name, email }) => (email ? `${name} (${email})` : name)).join(', ') || 'to let',
      fromOn ?? '–',
    ]),
    submit: rows.length === 1 ? 'Take in this plot' : `Take in these ${rows.length} plots`,
  });
  return lookThenSubmit({ question: lookAtPlots, asked: ['siteId', 'table'], preview }, importPlots, {
    slug,
    form: await withTableFile(form),
    done: ({ plots, members }) => ({ message: `${plots} plots and ${members} members taken in.` }),
  });
}

export async function drawPlotAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(drawPlot, { slug, form, fixed: { plotId }, done: () => ({ message: 'Drawn.' }) });
}

export async function letPlotAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(letPlot, {
    slug,
    form,
    fixed: { plotId },
    done: () => ({ message: 'Let. They are told where they can be mailed.' }),
  });
}

export async function endTenancyAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(endTenancy, {
    slug,
    form,
    fixed: { plotId },
    done: ({ holdingEnds }) => ({
      message: holdingEnds ? 'Ended. It was their last plot, so their credit lapses.' : 'Ended.',
    }),
  });
}

export async function nameBookerAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(nameBooker, { slug, form, fixed: { holdingId }, done: () => ({ message: 'Set; they are told.' }) });
}

export async function changeHoldersAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeHolders, {
    slug,
    form,
    fixed: { holdingId },
    done: () => ({ message: 'Set; they are told.' }),
  });
}

export async function halvePlotAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(halvePlot, {
    slug,
    form,
    fixed: { plotId },
    done: () => ({ redirectTo: `/${slug}/office/plots` }),
  });
}

export async function joinPlotsAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(joinPlots, {
    slug,
    form,
    fixed: { plotId },
    done: () => ({ redirectTo: `/${slug}/office/plots` }),
  });
}
