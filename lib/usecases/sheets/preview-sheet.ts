import 'server-only';
import { z } from 'zod';
import { sheetsIn } from '@/lib/data/ground-sheet';
import { overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { habitsOf } from '@/lib/domain/recipe/habits-of';
import { recipeOf } from '@/lib/domain/recipe/recipe-of';
import { portionOf } from '@/lib/domain/sheet/portion';
import { figuresOf } from '@/lib/domain/sheet/sheet-figures';
import { sheetWishInput } from '@/lib/schemas/sheets/sheet';
import { openBed, type OpenBed } from '../ground/open-bed';
import { query, type ReadContext, settle, wordsOf } from '../operation';
import type { Outcome } from '../refusal';
import { paceOfViewer } from './digger-pace';
import { likelyDigDay, settleOrder, type SheetGround, sheetGround, type SheetWish } from './settle-order';
import { sheetOutlook } from './sheet-outlook';

/**
 * What a sheet for a bed would want, before it is made. What is asked comes from an address: what cannot be read is refused
 * beside its field, as it would be when the sheet is made.
 */
export const previewSheet = query({
  name: 'preview-sheet',
  allow: canEnter,
  input: z.object({ bedId: z.uuid(), wish: z.record(z.string(), z.unknown()).default({}) }),
  read: async (context, { bedId, wish: raw }) => {
    const { scope, today } = context;
    const open = await openBed(context, bedId);
    const { bed, plot, holding } = open;
    const common = { today, units: scope.units, bed, plot: { id: plot.id, number: plot.number } };
    const parsed = sheetWishInput.safeParse(raw);
    const ground = parsed.success
      ? await settle(() => sheetGround(context, open, parsed.data))
      : { ok: false as const, refusals: wordsOf(parsed.error) };
    if (!parsed.success || !ground.ok)
      return { ...common, behind: await plainBehind(context, open, raw), sheets: [], answer: ground as Refusing };
    const { season, footprint } = ground.value;
    const others = (await sheetsIn(context.db, scope, [bed.frameId])).filter(
      (sheet) =>
        sheet.season === season &&
        sheet.holdingId === (holding?.id ?? null) &&
        overlap(sheet.footprint, footprint) !== null,
    );
    return {
      ...common,
      behind: behindOf(ground.value),
      sheets: others.map(({ id, ticks, group }) => ({ id, group, done: ticks.length })),
      answer: await settle(() => answerTo(context, open, ground.value, parsed.data)),
    };
  },
});

type Refusing = Extract<Outcome<SheetAnswer>, { ok: false }>;

// Where what was asked cannot be read, the form still says what holds while its fields are empty.
async function plainBehind(context: ReadContext, open: OpenBed, { group }: Record<string, unknown>) {
  const asked = sheetWishInput.safeParse({ group });
  const plain = asked.success ? asked.data : sheetWishInput.parse({});
  const ground = await settle(() => sheetGround(context, open, plain));
  return ground.ok ? behindOf(ground.value) : null;
}

/** What holds for the ground while nothing is typed: what it is for, recipe and habits. */
function behindOf({ season, group, kept, planned, footprint }: SheetGround) {
  const standing = planned.filter(({ cropGroup }) => cropGroup === 'standing').map(({ cropName }) => cropName);
  return {
    season,
    group,
    footprint,
    planned: [...new Set(planned.map(({ cropName }) => cropName))],
    standing: [...new Set(standing)],
    recipe: group && recipeOf(group, kept),
    habits: habitsOf(kept),
  };
}

async function answerTo(context: ReadContext, open: OpenBed, ground: SheetGround, wish: SheetWish) {
  const { scope, today } = context;
  const order = settleOrder(ground, wish, scope.units);
  const { season, footprint } = ground;
  const figures = figuresOf(order, footprint);
  const { plan } = figures.digging;
  const pace = await paceOfViewer(context, open.holding, order);
  const soilG = figures.moved.total.massG?.most || null;
  return {
    order,
    season,
    footprint,
    figures,
    pace,
    portion: portionOf(plan, [], pace, today, soilG),
    ...(await sheetOutlook(context, {
      ...{ frameId: open.bed.frameId, footprint, season, order, sheetId: null },
      on: likelyDigDay(order, today),
    })),
  };
}

/** What a sheet for a bed would want. */
export type SheetAnswer = Awaited<ReturnType<typeof answerTo>>;
