import { formatMassIn } from '@/lib/domain/quantity/mass';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { formatShortLength } from '@/lib/domain/quantity/short-length';
import type { SheetFigures } from '@/lib/domain/sheet/sheet-figures';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import type { StageCode } from '@/lib/domain/trench/stages';
import type { Place } from '@/lib/domain/trench/dressing';
import type { TrenchLayers } from '@/lib/domain/trench/layers';
import { heightWords, litres, mealAmount, mealName, spanWords, trenchWord } from './sheet-words';

/** What steps are told from. */
export type Told = {
  readonly order: SheetOrder;
  readonly figures: SheetFigures;
  readonly units: Units;
};

/** One step of the work: what it is called, and how it is done, in the trade's few words. */
export type StepWords = { readonly title: string; readonly how: string };

/**
 * A step in words.
 *
 * @param trench  the trench in hand, from 1; of a step of the whole bed, the last
 */
export function stepWords(code: StageCode, trench: number, told: Told): StepWords {
  const put = told.figures.layers.trenches[trench - 1];
  return steps[code]({ ...told, trench, put });
}

type At = Told & { readonly trench: number; readonly put: TrenchLayers | undefined };

const steps: Readonly<Record<StageCode, (at: At) => StepWords>> = {
  'mark-out': (at) => ({ title: 'Mark it out', how: markOut(at) }),
  'open-first': (at) => ({
    title: 'Throw out the top spit',
    how: sentence(`Dig ${spit(at)} deep, and clean out the crumbs.`, whereTo(at)),
  }),
  'fork-bottom': (at) => ({
    title: 'Fork the bottom over',
    how: sentence(
      'A fork’s depth, from end to end. Leave it where it lies: never bring it up.',
      mealInto(at, 'bottom', 'Fork in'),
      manureInto(at, 'bottom', 'Spread', 'over it'),
    ),
  }),
  'dress-bottom': (at) => ({
    title: 'Dress the bottom',
    how: sentence(mealInto(at, 'bottom', 'Strew'), manureInto(at, 'bottom', 'Spread', 'over it')),
  }),
  'turn-next': (at) => ({
    title: `Turn trench ${at.trench + 1} over on to it`,
    how: sentence(
      `Its top spit, ${spit(at)} deep, upside down${withStraw(at)}.`,
      topPut(at),
      `That leaves trench ${at.trench + 1} open.`,
    ),
  }),
  'turn-round': (at) => ({
    title: `Turn round: trench ${at.trench + 1} comes across`,
    how: sentence(
      `Turn the top spit of trench ${at.trench + 1}, beside this one, over into it${withStraw(at)}.`,
      topPut(at),
      'From here the work goes back up the other half.',
    ),
  }),
  'fill-last': (at) => ({
    title: 'Fill it with the soil of trench 1',
    how: sentence(
      at.trench === 1
        ? `Put its own soil back${withStraw(at)}.`
        : `From the heap${at.order.layout === 'two-halves' ? ' beside it' : ' at this end'}${withStraw(at)}.`,
      topPut(at),
    ),
  }),
  'spread-strip': (at) => ({
    title: `Spread on strip ${at.trench}`,
    how: sentence(mealInto(at, 'top', 'Strew'), manureInto(at, 'top', 'Spread', 'evenly'), straw(at)),
  }),
  'fork-strip': (at) => ({
    title: `Fork strip ${at.trench} over`,
    how: 'A fork’s depth, working it in as you go. Step back, and tread on nothing that is done.',
  }),
  'lay-mulch': (at) => ({
    title: `Lay strip ${at.trench}`,
    how: sentence(
      mealInto(at, 'top', 'Strew'),
      manureInto(at, 'top', 'Lay', 'on top, evenly'),
      straw(at),
      'Don’t dig: worms take it down.',
    ),
  }),
  'left-high': (at) => ({ title: at.order.leftHigh ? 'Leave it high and rough' : 'Leave it rough', how: leftHigh(at) }),
  laid: () => ({ title: 'Let it lie', how: 'Keep it a hand’s breadth off stems and edging. It sinks as it rots.' }),
  'spring-finish': (at) => ({ title: 'In spring', how: springWords(at) }),
};

function markOut({ order, figures, units }: At): string {
  const { plan, dressing } = figures.digging;
  const [first, last] = [plan.trenches[0], plan.trenches.at(-1)];
  const word = trenchWord(order);
  const many = word === 'trench' ? 'trenches' : 'strips';
  const widths = new Set(plan.trenches.map(({ widthCm }) => widthCm));
  const odd = plan.trenches.find(({ widthCm }) => widthCm !== first?.widthCm);
  return sentence(
    `Stretch a line down each side${order.layout === 'two-halves' && word === 'trench' ? ', and one down the middle' : ''}.`,
    `Nick out ${many} ${formatShortLength(first?.widthCm ?? 0, units)} wide, each ${formatLength(first?.lengthCm ?? 0, units)} long.`,
    widths.size > 1 && odd && last
      ? `The farthest is ${formatShortLength(odd.widthCm, units)} wide, so that nothing is left over.`
      : '',
    dressing.strawGPerM2 > 0 && word === 'trench'
      ? `Lay the straw ahead, ${formatMassIn(figures.layers.total.strawG, units)} in all: you walk on it, and it goes under as you come to it.`
      : '',
  );
}

function whereTo({ order, figures }: At): string {
  if (figures.digging.plan.trenches.length === 1) return 'Lay it beside the trench: it goes back where it came from.';
  if (order.layout === 'two-halves') return 'Lay it beside the other half: it fills the last trench, next to this one.';
  const barrows = figures.openingBarrows;
  const many = barrows ? `, ${spanWords(barrows, String)} ${barrows.most === 1 ? 'barrow' : 'barrows'}` : '';
  return `Wheel it to the far end${many}: it fills the last trench.`;
}

function topPut(at: At): string {
  return sentence(mealInto(at, 'top', 'Strew'), manureInto(at, 'top', 'Mix', 'through it as you turn'));
}

function manureInto({ put }: At, place: Place, verb: string, how: string): string {
  const volumeMl = place === 'bottom' ? put?.manureBottomMl : put?.manureTopMl;
  return volumeMl ? `${verb} ${litres(volumeMl)} of manure ${how}.` : '';
}

function mealInto({ put, units }: At, place: Place, verb: string): string {
  return (put?.meals ?? [])
    .filter(({ into, massG }) => into === place && massG > 0)
    .map((meal) => `${verb} ${mealAmount(meal, units)} of ${mealName(meal.key)}.`)
    .join(' ');
}

function straw({ put, units }: At): string {
  return put?.strawG ? `Then ${formatMassIn(put.strawG, units)} of straw.` : '';
}

function withStraw({ order }: At): string {
  return order.strawGPerM2 > 0 ? ', the straw under it' : '';
}

function spit({ order, units }: At): string {
  return formatShortLength(order.spitDepthCm, units);
}

function leftHigh({ order, figures, units }: At): string {
  const { swellCm, manureCm, strawCm } = figures.rise;
  const laid = heightWords({ least: manureCm + strawCm, most: manureCm + strawCm }, units);
  const hasLaid = manureCm + strawCm > 0;
  return sentence(
    swellCm
      ? `It stands ${heightWords(swellCm, units)} higher for being loosened${hasLaid ? `, and ${laid} for what is in it` : ''}.`
      : `How far this soil swells nobody has published${hasLaid ? `; what is in it raises it ${laid}` : ''}.`,
    'Break no clods and keep off it: frost does the rest.',
    order.leftHigh ? 'It sinks over winter, how far nobody has measured.' : '',
  );
}

/** What is done in spring, before the crop. */
function springWords({ order, units }: At): string {
  const depth = order.springFinishCm ? formatShortLength(order.springFinishCm, units) : '';
  return sentence(
    `Once it no longer sticks, fold in the top ${depth} alone, with a fork or a rake; leave the rest as it lies.`,
    order.firmness === 'firm' ? 'Then tread it firm.' : 'Don’t tread it: this crop wants it loose.',
  );
}

function sentence(...parts: readonly string[]): string {
  return parts.filter(Boolean).join(' ');
}
