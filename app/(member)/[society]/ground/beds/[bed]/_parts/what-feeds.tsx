import { Empty, Reason, Sheet } from '@/app/_ui/sheet';
import { nutrientUnit } from '@/app/_ui/nutrient-words';
import { soilOf } from '@/lib/domain/catalogue/soils';
import { CropBalance } from './crop-balance';
import { DressingsTable, DressingsWhy } from './dressings-table';
import type { Feeding } from './feeding';
import { NitrogenGuidance } from './nitrogen-guidance';

/** What feeds this ground: its dressings, what they supply beside what the crop demands, and the guidance on nitrogen. */
export function WhatFeeds({ feeding, bedCm2 }: { feeding: Feeding; bedCm2: number }) {
  const { season, units, dressings, pieces, crops, soil, nitrogen } = feeding;
  const nameOf = (key: string) => crops.find((crop) => crop.key === key)?.name ?? key;
  return (
    <Sheet title={`What feeds this ground, ${season}`} flush>
      {dressings.length === 0 ? (
        <Empty>
          {nitrogen.isRecorded
            ? 'No manure, compost or meal in the last twelve months.'
            : 'Nothing is logged here, so what feeds this ground is not known. Log what was put on, with how much, and it is worked out.'}
        </Empty>
      ) : (
        <DressingsTable dressings={dressings} units={units} bedCm2={bedCm2} season={season} />
      )}
      <div className="sheet-body">
        {dressings.length ? (
          <p className="small soft">
            {nutrientUnit(units)} on the ground where it lies; as oxides where that is usual: P₂O₅, K₂O, MgO. Straw is
            not counted. {soil.isAssumed ? 'Soil assumed' : 'Your soil'}: {soilOf(soil.key)?.name.toLowerCase()}.
          </p>
        ) : null}
        <DressingsWhy dressings={dressings} units={units} />
        {[...new Set(pieces.map(({ cropKey }) => cropKey))].map((key) => (
          <CropBalance
            key={key}
            pieces={pieces.filter(({ cropKey }) => cropKey === key)}
            name={key && nameOf(key)}
            season={season}
            bedCm2={bedCm2}
            units={units}
          />
        ))}
        {pieces.every(({ cropKey }) => cropKey === null) ? (
          <p>No crop is planned here for {season}. Plan one, and what it demands stands beside what the ground gets.</p>
        ) : null}
        <NitrogenGuidance feeding={feeding} bedCm2={bedCm2} />
        <Reason ask="What these figures can and can’t say">
          <p className="small">
            Tables speak of the usual: a heap holds half or twice as much, and only a laboratory knows which. What a
            crop is said to demand counts what the soil itself gives, which nobody has measured here; so the two sides
            are shown beside each other, and nothing is subtracted.
          </p>
        </Reason>
      </div>
    </Sheet>
  );
}
