/** Why what somebody saw of a heap was not kept. */
export type HeapRefusal = 'look-above-heap';
