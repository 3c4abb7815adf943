import { cropDemandsOf } from '../catalogue/crop-demands';
import { type PublishedYield, publishedYields } from '../catalogue/published-yields';
import type { SourceKey } from '../catalogue/sources';
import { poundG } from '../quantity/mass';

/** What a crop is said to yield; least ≤ most [g/m²]. */
export type YieldSaid = {
  readonly leastGPerM2: number;
  readonly mostGPerM2: number;
  /** Gardens, or fields of growers who sell it. */
  readonly from: 'gardens' | 'fields';
  readonly source: SourceKey;
};

const inchM = 0.0254;
const tenFeetM = 120 * inchM;

/**
 * What is published of a crop's yield, told on a square metre.
 *
 * Method: pounds from ten feet of row ÷ the ground that row takes, the widest rows with the least yield and the closest with the most; of a
 * plant likewise with both distances. A field yield of 1 dt/ha is 10 g/m²; of several rows of the official table the range is told.
 *
 * @param cropKey  of the catalogue or a society's own
 * @returns        garden accounts first; none where nobody prints any
 * @source         the accounts: catalogue/published-yields and catalogue/crop-demands; pound and inch: Weights and Measures Act 1985
 * @example        parsnip, 15 lb from 10 ft in rows 18 to 24 in apart → 3,662 to 4,882 g/m²
 */
export function yieldsSaidOf(cropKey: string): readonly YieldSaid[] {
  const accounts = publishedYields.filter(({ cropKeys }) => cropKeys.includes(cropKey));
  const field = cropDemandsOf(cropKey).flatMap(({ yieldDtPerHa, source }) =>
    yieldDtPerHa ? [{ gPerM2: yieldDtPerHa * 10, source }] : [],
  );
  const grams = field.map(({ gPerM2 }) => gPerM2);
  const [first] = field;
  return [
    ...accounts.map(told),
    ...(first
      ? [
          {
            leastGPerM2: Math.min(...grams),
            mostGPerM2: Math.max(...grams),
            from: 'fields' as const,
            source: first.source,
          },
        ]
      : []),
  ];
}

function told(account: PublishedYield): YieldSaid {
  const [least, most] = perM2(account);
  const from = account.of === 'hectare' ? 'fields' : 'gardens';
  return { leastGPerM2: Math.round(least), mostGPerM2: Math.round(most), from, source: account.source };
}

function perM2(account: PublishedYield): [least: number, most: number] {
  const { least, most } = account;
  if (account.of === 'hectare') return [least * 100, most * 100];
  const [along, closeAlong] =
    account.of === 'row' ? [tenFeetM, tenFeetM] : [account.inRowMostIn * inchM, account.inRowLeastIn * inchM];
  return [
    (least * poundG) / (along * account.rowsMostIn * inchM),
    (most * poundG) / (closeAlong * account.rowsLeastIn * inchM),
  ];
}
