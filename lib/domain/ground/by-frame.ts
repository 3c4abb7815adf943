/**
 * Records gathered by the frame they lie in, in their own order: only within one can footprints overlap.
 *
 * @example byFrame([{ frameId: 'a' }, { frameId: 'b' }]).size → 2
 */
export function byFrame<One extends { readonly frameId: string }>(records: readonly One[]): Map<string, One[]> {
  const frames = new Map<string, One[]>();
  for (const record of records) {
    const here = frames.get(record.frameId);
    if (here) here.push(record);
    else frames.set(record.frameId, [record]);
  }
  return frames;
}
