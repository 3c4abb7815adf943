import { form, writeId } from '../write';

/** Taking out all of the society: nothing to fill in but the form's own number. */
export const exportInput = form({ writeId });
