import { z } from 'zod';
import { line, optionalLine } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';

const pointsWords = 'Give the points of the path one a line, such as 2, 27.5.';
const sure = z.literal('yes', 'Tick the box to confirm.');

/** A distance across the site as it is typed; the use-case reads it, in the member's own units. */
function distance() {
  return z
    .string({ error: 'Give one distance, such as 27.5.' })
    .max(40, 'That is too long for a distance.')
    .default('');
}

const path = {
  name: optionalLine('the path’s name', 60),
  points: z.string({ error: pointsWords }).max(8000, 'That is more than one path holds. Draw it in two.'),
  lorry: z.enum(['none', 'whole', 'part'], 'Say how much of it a lorry can drive.'),
  lorryFrom: distance(),
  lorryTo: distance(),
};

export const addPathInput = form({ writeId, siteId: rowId, ...path });
export const changePathInput = form({ writeId, pathId: rowId, ...path });
export const retirePathInput = form({ writeId, pathId: rowId, sure });

const dropPoint = { name: line('a name for the drop point', 60), east: distance(), south: distance() };

/** With a delivery, that is to be tipped there from now on. */
export const addDropPointInput = form({ writeId, siteId: rowId, ...dropPoint, deliveryId: optionalRowId });
export const changeDropPointInput = form({ writeId, dropPointId: rowId, ...dropPoint });
export const retireDropPointInput = form({ writeId, dropPointId: rowId, sure });
