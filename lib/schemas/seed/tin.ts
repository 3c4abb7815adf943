import { z } from 'zod';
import { sowingBounds } from '@/lib/domain/seed/own-sowing';
import { line, optionalLine, optionalWhole, typedLength, wholeNumber } from '../text';
import { form, rowId, writeId } from '../write';

const mostSeeds = 100_000;
const amountWords = 'Give how much is in it, such as 200 seeds or 1.5 g.';

const cropKey = line('the crop', 60);
const packet = {
  variety: optionalLine('the variety', 60),
  packedYear: optionalWhole('the year on the packet', 1950, 2199),
  germinationPercent: optionalWhole('how many of a hundred came up', 0, 100),
};

export const addPacketInput = form({
  writeId,
  holdingId: rowId,
  cropKey,
  amount: z.string({ error: amountWords }).trim().min(1, amountWords).max(12, amountWords),
  unit: z.enum(['seeds', 'milligrams'], 'Choose seeds or grams.'),
  ...packet,
});
export const changePacketInput = form({
  writeId,
  packetId: rowId,
  seeds: wholeNumber('how many seeds are left', 0, mostSeeds),
  ...packet,
});
export const usePacketInput = form({ writeId, packetId: rowId, seeds: wholeNumber('how many you used', 1, mostSeeds) });
export const packetInput = form({ writeId, packetId: rowId });

export const changeSowingInput = form({
  writeId,
  cropKey,
  rows: typedLength(),
  inRow: typedLength(),
  from: z
    .enum(['', 'seed', 'sets'], 'Choose seed or sets, or leave it as usual.')
    .default('')
    .transform((from) => from || null),
  germinationPercent: optionalWhole('how many of a hundred come up', 1, 100),
  marginPercent: optionalWhole('the margin in percent', 0, sowingBounds.marginPercent),
});
