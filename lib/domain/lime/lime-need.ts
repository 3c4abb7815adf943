import {
  carbonatePerOxideThousandths,
  chlorideBelowWater,
  classOfTexture,
  type LimeSoilClass,
  type LimeTexture,
  limeByBuffer,
  limeClasses,
  limeSlope,
  limeSteps,
} from '../catalogue/lime-tables';
import type { SourceKey } from '../catalogue/sources';
import { wholeFrom } from '../quantity/checked';

/** Ground limestone by one source, as a range where the source or the test leaves one [g/m²]. */
export type LimeAccount = {
  readonly leastGPerM2: number;
  readonly mostGPerM2: number;
  readonly source: SourceKey;
  readonly reasons: readonly LimeReason[];
};

export type LimeReason =
  /** The pH is the target's or above: none. */
  | 'none-needed'
  /** Between the rows that were printed, by the straight line; or beyond them, by the nearest row's. */
  | 'between-rows'
  | 'beyond-table'
  /** The source goes by pH in potassium chloride; pH in water was lowered by a range from memory. */
  | 'ph-lowered-from-memory'
  /** The source has a target of its own. */
  | 'own-target';

export type LimeNeed = {
  readonly gPerM2: number;
  readonly source: SourceKey;
  readonly reasons: readonly LimeReason[];
  /** What other sources say of the same soil: they differ three- or fourfold. */
  readonly otherwise: readonly LimeAccount[];
};

/**
 * How much ground limestone brings soil of a texture from one pH to another, by the default table and by others.
 *
 * Method: the table's amounts are for a whole pH; in between they are taken as a straight line, beyond as its
 * continuation, and both are said.
 *
 * @param texture         of the topsoil
 * @param phTenths        in water, whole number of tenths from 30 to 90; 58 is pH 5.8
 * @param targetPhTenths  the same
 * @returns               [g/m²] ≥ 0, rounded once, to the nearest; 0 only where the pH is the target's or above
 * @throws RangeError     outside these bounds
 * @source                South Africa, National Department of Agriculture, Application of lime to soil, 2000
 * @example               loam, pH 5.5 to 6.5 → 200 g/m²; a UK rough guide says 600
 */
export function limeNeed(texture: LimeTexture, phTenths: number, targetPhTenths: number): LimeNeed {
  phFrom(phTenths);
  phFrom(targetPhTenths);
  const gPerM2 = Math.round(
    limeSteps.rows.reduce((sum, step, at) => {
      // The first and the last row carry on beyond the table.
      const from = at === 0 ? 0 : step.fromPhTenths;
      const to = at === limeSteps.rows.length - 1 ? 140 : step.toPhTenths;
      const tenths = Math.max(0, Math.min(targetPhTenths, to) - Math.max(phTenths, from));
      return sum + (tenths * step.gPerM2[texture]) / 10;
    }, 0),
  );
  return {
    gPerM2,
    source: limeSteps.source,
    reasons: stepReasons(phTenths, targetPhTenths),
    otherwise: [bySlope(phTenths, targetPhTenths), byClass(texture, phTenths)],
  };
}

function stepReasons(phTenths: number, targetPhTenths: number): LimeReason[] {
  if (phTenths >= targetPhTenths) return ['none-needed'];
  const printed = limeSteps.rows.flatMap(({ fromPhTenths, toPhTenths }) => [fromPhTenths, toPhTenths]);
  const both = [phTenths, targetPhTenths];
  const beyond = both.some((ph) => ph < Math.min(...printed) || ph > Math.max(...printed));
  const between = both.some((ph) => ph > Math.min(...printed) && ph < Math.max(...printed) && !printed.includes(ph));
  return [...(between ? (['between-rows'] as const) : []), ...(beyond ? (['beyond-table'] as const) : [])];
}

function bySlope(phTenths: number, targetPhTenths: number): LimeAccount {
  const { gPerM2PerPh, fromPhTenths, toPhTenths, targetPhTenths: printedTarget, source } = limeSlope;
  const gPerM2 = Math.round((Math.max(0, targetPhTenths - phTenths) * gPerM2PerPh) / 10);
  const printed = targetPhTenths === printedTarget && phTenths >= fromPhTenths && phTenths <= toPhTenths;
  const reasons: LimeReason[] = gPerM2 === 0 ? ['none-needed'] : printed ? [] : ['beyond-table'];
  return { leastGPerM2: gPerM2, mostGPerM2: gPerM2, source, reasons };
}

function byClass(texture: LimeTexture, phTenths: number): LimeAccount {
  const { leastTenths, mostTenths } = chlorideBelowWater;
  const soil = classOfTexture[texture];
  const leastGPerM2 = limeByClass(soil, phTenths - leastTenths).carbonateGPerM2;
  const mostGPerM2 = limeByClass(soil, phTenths - mostTenths).carbonateGPerM2;
  const none: LimeReason[] = mostGPerM2 === 0 ? ['none-needed'] : [];
  return {
    leastGPerM2,
    mostGPerM2,
    source: limeClasses.source,
    reasons: ['own-target', 'ph-lowered-from-memory', ...none],
  };
}

/**
 * Lime by the class of soil and its pH in potassium chloride.
 *
 * @param phChlorideTenths  whole number of tenths ≥ 0
 * @returns                 the dose as oxide and as ground limestone, and the most at once [g/m²]
 * @throws RangeError       on a fraction or less than nothing
 * @source                  IUNG, Assessment of liming demands, Tables 1 and 2
 * @example                 medium soil, 5.3 → needed: 300 g/m² of CaO, 536 of limestone
 */
export function limeByClass(
  soil: LimeSoilClass,
  phChlorideTenths: number,
): {
  readonly need: string | null;
  readonly oxideGPerM2: number;
  readonly carbonateGPerM2: number;
  readonly mostAtOnceGPerM2: number;
} {
  wholeFrom(0, phChlorideTenths);
  const row = limeClasses.rows.find((one) => one.soil === soil);
  if (!row) throw new RangeError(`no such class of soil: ${soil}`);
  const dose = row.doses.find(({ toPhTenths }) => phChlorideTenths <= toPhTenths);
  const carbonate = (oxideGPerM2: number) => Math.round((oxideGPerM2 * carbonatePerOxideThousandths) / 1000);
  return {
    need: dose?.need ?? null,
    oxideGPerM2: dose?.oxideGPerM2 ?? 0,
    carbonateGPerM2: carbonate(dose?.oxideGPerM2 ?? 0),
    mostAtOnceGPerM2: carbonate(row.mostAtOnceGPerM2),
  };
}

/**
 * Lime by the buffer pH that a laboratory gives.
 *
 * @param bufferPhTenths  measured; whole number of tenths from 30 to 90
 * @param targetPhTenths  buffer pH aimed at; 67 in the source's example
 * @returns               [g/m²], 0 where it is reached
 * @throws RangeError     outside these bounds
 * @source                Teagasc, Calculating Lime Advice, 2023: (target − measured) × 12.5 t/ha
 * @example               limeByBufferPh(63) → 500 g/m² (5.0 t/ha)
 */
export function limeByBufferPh(bufferPhTenths: number, targetPhTenths: number = limeByBuffer.targetPhTenths): number {
  const short = Math.max(0, phFrom(targetPhTenths) - phFrom(bufferPhTenths));
  return Math.round((short * limeByBuffer.gPerM2PerPh) / 10);
}

function phFrom(tenths: number): number {
  if (wholeFrom(30, tenths) > 90) throw new RangeError(`no soil has this pH: ${tenths} tenths`);
  return tenths;
}
