'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { wishRows } from '@/lib/schemas/ground/course';
import { askCourse, cancelCourse, moveOneOn } from '@/lib/usecases/course/ask-course';
import { changeBoard, takeOnCourse } from '@/lib/usecases/course/keep-course';

type Typed = Record<string, string | string[]>;

/** Rows come as `wanted.<row>.key` and `wanted.<row>.area`, entries as `c:<bed id>:<season>` with `must:<key>` or `rather:<key>`. */
export async function askCourseAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const shape = (typed: Typed) => ({
    writeId: typed.writeId,
    firstSeason: typed.firstSeason,
    years: typed.years,
    keepOrder: typed.keepOrder,
    evenTurns: typed.evenTurns,
    bedIds: [typed.bedIds ?? []].flat(),
    wanted: Array.from({ length: wishRows }, (_row, at) => ({
      key: typed[`wanted.${at}.key`] ?? '',
      area: typed[`wanted.${at}.area`] ?? '',
    })),
    cells: entriesOf(typed).flatMap(({ bedId, season, value }) => {
      const [kind = '', key = ''] = value.split(':');
      return kind ? [{ bedId, season, kind, key }] : [];
    }),
  });
  return submitForm(askCourse, {
    slug,
    form,
    shape,
    fixed: { holdingId },
    done: ({ courseId }) => ({ redirectTo: `/${slug}/ground/course/${courseId}` }),
  });
}

function entriesOf(typed: Typed): { bedId: string; season: number; value: string }[] {
  return Object.entries(typed).flatMap(([name, value]) => {
    const [mark, bedId = '', season] = name.split(':');
    return mark === 'c' && typeof value === 'string' ? [{ bedId, season: Number(season), value }] : [];
  });
}

export async function cancelCourseAction(
  slug: string,
  courseId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(cancelCourse, { slug, form, fixed: { courseId }, done: () => ({ message: 'Cancelled.' }) });
}

export async function moveOneOnAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(moveOneOn, {
    slug,
    form,
    fixed: { holdingId },
    done: ({ courseId }) => ({ redirectTo: `/${slug}/ground/course/${courseId}` }),
  });
}

export async function changeBoardAction(
  slug: string,
  courseId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeBoard, {
    slug,
    form,
    shape: (typed) => ({
      writeId: typed.writeId,
      cells: entriesOf(typed).map(({ bedId, season, value }) => ({ bedId, season, key: value })),
    }),
    fixed: { courseId },
    done: ({ changed }) => ({
      message:
        changed === 0 ? 'Nothing was different.' : changed === 1 ? 'One entry changed.' : `${changed} entries changed.`,
    }),
  });
}

export async function takeOnAction(slug: string, courseId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(takeOnCourse, {
    slug,
    form,
    fixed: { courseId },
    done: ({ entries }) => ({ message: `${entries} entries stand on the board now.` }),
  });
}
