import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { rangeFigures, weightWords, yieldUnit } from '@/app/_ui/yield-words';
import { mixedYields } from '@/lib/domain/catalogue/published-yields';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { YieldingCrop } from './yields-table';

/** What the figures can and can't say, where the printed ones come from, and what counted pieces are taken to weigh. */
export function WhatTheySay({ crops, units }: { crops: readonly YieldingCrop[]; units: Units }) {
  const weighed = crops.filter(({ pieceG, yields }) => pieceG && yields.some(({ measure }) => measure === 'pieces'));
  return (
    <Sheet title="What these figures can and can’t say" wide>
      <p>
        A yield counts the ground of the plantings that something was logged from, paths left out. What was not weighed
        is not in it. One bed in one season says little: weather, seed and slugs differ from year to year.
      </p>
      <Reason ask="Where the printed yields come from">
        <ul className="small">
          {crops.flatMap(({ name, said }) =>
            said.map(({ leastGPerM2, mostGPerM2, from, source }) => (
              <li key={`${name} ${source} ${leastGPerM2}`}>
                {name}, {from === 'gardens' ? 'in gardens' : 'of growers who sell it'}:{' '}
                {rangeFigures(leastGPerM2, mostGPerM2, units)} {yieldUnit(units)}{' '}
                <span className="soft">({sourceWords(source)})</span>
              </li>
            )),
          )}
          {mixedYields.map(({ name, gPerM2, source }) => (
            <li key={name}>
              All crops together, {name}: {weightWords(gPerM2, units)}{' '}
              <span className="soft">({sourceWords(source)})</span>
            </li>
          ))}
        </ul>
      </Reason>
      {weighed.length ? (
        <Reason ask="What counted pieces are taken to weigh">
          <p className="small">
            {weighed.map(({ name, pieceG }) => `${name} ${formatMassIn(pieceG ?? 0, units)}`).join(', ')}: common
            practice. Weigh a few of your own, and you know better.
          </p>
        </Reason>
      ) : null}
    </Sheet>
  );
}
