import { sourceWords } from '@/app/_ui/setting-words';
import { Reason } from '@/app/_ui/sheet';
import { heightWords, soilWeight, soilVolume, spanWords, trenchesWords, trenchWord } from '@/app/_ui/sheet-words';
import { soilOf } from '@/lib/domain/catalogue/soils';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { formatShortLength } from '@/lib/domain/quantity/short-length';
import type { SheetAnswer } from '@/lib/usecases/sheets/preview-sheet';
import { Wanted } from './wanted';

type Props = { answer: SheetAnswer; units: Units };

/** How many trenches, and why. */
export function Trenches({ answer, units }: Props) {
  const { order, figures } = answer;
  const { plan } = figures.digging;
  const [first] = plan.trenches;
  const odd = plan.trenches.find(({ widthCm }) => widthCm !== first?.widthCm);
  const word = trenchWord(order);
  const size = `${formatLength(first?.lengthCm ?? 0, units)} × ${formatShortLength(first?.widthCm ?? 0, units)}`;
  return (
    <Wanted figure={`${trenchesWords(order, plan.trenches.length)}, ${size}`}>
      <Reason ask="Why so many?">
        <p className="small">
          The ground is {formatLength(plan.runCm, units)} the way the work goes: as many{' '}
          {word === 'trench' ? 'trenches' : 'strips'} of {formatShortLength(order.trenchWidthCm, units)} as come nearest
          {odd ? `; the farthest takes what is left, ${formatShortLength(odd.widthCm, units)}` : ''}
          {order.layout === 'two-halves' ? '. In two halves there are twice as many, half as long' : ''}.
        </p>
      </Reason>
    </Wanted>
  );
}

/** The soil that is turned, and how high it will stand. */
export function Soil({ answer, units }: Props) {
  const { order, figures } = answer;
  const { openedMl, forkedMl, massG, looseMl } = figures.moved.total;
  if (openedMl + forkedMl === 0) return null;
  const soil = soilOf(order.soil);
  const { swellCm, manureCm, strawCm } = figures.rise;
  const laidCm = manureCm + strawCm;
  const laid = heightWords({ least: laidCm, most: laidCm }, units);
  return (
    <Wanted
      figure={
        openedMl > 0 ? `${soilVolume(openedMl)} of soil to turn over` : `${soilVolume(forkedMl)} of soil to loosen`
      }
    >
      <p>
        {openedMl > 0 ? `${capital(soilWeight(massG, units))} as it lies. ` : ''}
        {swellCm
          ? `The ground will stand ${heightWords(swellCm, units)} high from that, and ${laid} for what goes in.`
          : `What goes in raises it by ${laid}; how far this soil swells nobody has published.`}{' '}
        How far it sinks again no source says.
      </p>
      <Reason ask="How reckoned?">
        <p className="small">
          {soil?.name}: it swells by {spanOfSoil(soil?.swellLeastPercent, soil?.swellMostPercent, '%')} (
          {soilSource(soil?.sources.swellLeastPercent)}; {soilSource(soil?.sources.swellMostPercent)}), and weighs{' '}
          {spanOfSoil(soil?.inPlaceLeastGPerL, soil?.inPlaceMostGPerL, 'g a litre')} as it lies (
          {soilSource(soil?.sources.inPlaceLeastGPerL)}; {soilSource(soil?.sources.inPlaceMostGPerL)}).{' '}
          {looseMl ? `Turned, it lies as ${spanWords(looseMl, soilVolume)}.` : ''}{' '}
          {forkedMl > 0 && openedMl > 0 ? `Below it ${soilVolume(forkedMl)} are loosened where they lie.` : ''}{' '}
          {figures.openingBarrows
            ? `The first trench’s soil fills ${spanWords(figures.openingBarrows, String)} barrows.`
            : ''}
        </p>
      </Reason>
    </Wanted>
  );
}

function spanOfSoil(least: number | null | undefined, most: number | null | undefined, unit: string): string {
  if (least === null || most === null || least === undefined || most === undefined) return 'nobody knows how much';
  return least === most ? `${least} ${unit}` : `${least} to ${most} ${unit}`;
}

function soilSource(source: Parameters<typeof sourceWords>[0] | null | undefined): string {
  return source ? sourceWords(source) : 'no source';
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
