'use server';

import { lookThenSubmit, submitForm } from '@/app/_server/form-action';
import { withTableFile } from '@/app/_server/table-file';
import type { FormState } from '@/app/_ui/form-state';
import { loggedWords } from '@/app/_ui/work-words';
import { addBeds, changeBed, joinBeds, retireBed, splitBed } from '@/lib/usecases/ground/keep-beds';
import { fillGrid, recordPlanting, retirePlanting } from '@/lib/usecases/ground/keep-plantings';
import { recordTrouble, retireTrouble } from '@/lib/usecases/ground/keep-troubles';
import { logWork, retireWork } from '@/lib/usecases/ground/keep-works';
import { importPlantings, lookAtPlantings, type PlantingSeen } from '@/lib/usecases/ground/import-plantings';

export async function addBedsAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addBeds, {
    slug,
    form,
    fixed: { plotId },
    done: ({ bedIds }) => ({ message: bedIds.length === 1 ? 'The bed is drawn.' : `${bedIds.length} beds are drawn.` }),
  });
}

export async function changeBedAction(slug: string, bedId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeBed, {
    slug,
    form,
    fixed: { bedId },
    done: (bed) => ({ redirectTo: `/${slug}/ground/beds/${bed.bedId}` }),
  });
}

export async function retireBedAction(slug: string, bedId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(retireBed, { slug, form, fixed: { bedId }, done: () => ({ redirectTo: `/${slug}/ground` }) });
}

export async function splitBedAction(slug: string, bedId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(splitBed, { slug, form, fixed: { bedId }, done: () => ({ redirectTo: `/${slug}/ground` }) });
}

export async function joinBedsAction(slug: string, bedId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(joinBeds, {
    slug,
    form,
    fixed: { bedId },
    done: (joined) => ({ redirectTo: `/${slug}/ground/beds/${joined.bedId}` }),
  });
}

export async function recordPlantingAction(
  slug: string,
  bedId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(recordPlanting, {
    slug,
    form,
    fixed: { bedId },
    done: () => ({ redirectTo: `/${slug}/ground/beds/${bedId}` }),
  });
}

export async function retirePlantingAction(
  slug: string,
  plantingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retirePlanting, { slug, form, fixed: { plantingId }, done: () => ({ message: 'Taken back.' }) });
}

/** The fields that a kind of work has beside those of all work come with its form. */
export async function logWorkAction(slug: string, bedId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(logWork, {
    slug,
    form,
    fixed: { bedId },
    done: (logged) => ({ message: loggedWords(logged) }),
  });
}

export async function retireWorkAction(
  slug: string,
  bedId: string,
  workId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireWork, { slug, form, fixed: { bedId, workId }, done: () => ({ message: 'Taken back.' }) });
}

/** Cells come as `c:<bed id>:<season>` with a crop key each. */
export async function fillGridAction(slug: string, plotId: string, _: FormState, form: FormData): Promise<FormState> {
  const shape = (typed: Record<string, string | string[]>) => ({
    writeId: typed.writeId,
    cells: Object.entries(typed).flatMap(([name, cropKey]) => {
      const [mark, bedId, season] = name.split(':');
      return mark === 'c' ? [{ bedId, season: Number(season), cropKey }] : [];
    }),
  });
  return submitForm(fillGrid, {
    slug,
    form,
    shape,
    fixed: { plotId },
    done: ({ recorded }) => ({
      message: recorded ? `${recorded} recorded.` : 'Nothing was different, so nothing was recorded.',
    }),
  });
}

export async function importPlantingsAction(
  slug: string,
  plotId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const preview = (rows: PlantingSeen[]) => ({
    columns: ['line', 'bed', 'crop', 'variety', 'season', 'ground'],
    rows: rows.map(({ line, bed, crop, variety, firstSeason, lastSeason, footprint: { widthCm, lengthCm } }) => [
      String(line),
      bed,
      crop,
      variety ?? '–',
      firstSeason === lastSeason ? String(firstSeason) : `${firstSeason} to ${lastSeason}`,
      `${widthCm / 100} × ${lengthCm / 100} m`,
    ]),
    submit: rows.length === 1 ? 'Take in this planting' : `Take in these ${rows.length} plantings`,
  });
  return lookThenSubmit({ question: lookAtPlantings, asked: ['table'], preview }, importPlantings, {
    slug,
    form: await withTableFile(form),
    fixed: { plotId },
    done: ({ recorded }) => ({ message: `${recorded} plantings taken in.` }),
  });
}

export async function recordTroubleAction(
  slug: string,
  bedId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(recordTrouble, {
    slug,
    form,
    fixed: { bedId },
    done: () => ({ message: 'Recorded. This ground has its longer break now.' }),
  });
}

export async function retireTroubleAction(
  slug: string,
  troubleId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireTrouble, { slug, form, fixed: { troubleId }, done: () => ({ message: 'Taken back.' }) });
}
