import { wholeNumber } from '../text';
import { form, rowId, writeId } from '../write';

export const recordLookInput = form({ writeId, deliveryId: rowId, loads: wholeNumber('what is left', 0, 99_999) });
