import type { HeapRefusal } from '@/lib/usecases/refusals/heap';
import type { Words } from './shape';

export const heapWords: Words<HeapRefusal> = {
  'look-above-heap': ({ heap }) =>
    `The heap was measured at ${heap}, so no more than that can be left. Give ${heap} or fewer; the secretary can measure it again.`,
};
