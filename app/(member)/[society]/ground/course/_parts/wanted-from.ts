type Crop = { readonly key: string; readonly cropGroup: string | null };

/** A hectare: no store wants more of one crop [cm²]. */
const mostCm2 = 100_000_000;

/** The ground that one crop wants, from the address that the store leads here with: `onion:40000`. What makes no sense is passed over. */
export function wantedFrom(text: string | undefined, crops: readonly Crop[]) {
  const [, key, area] = /^(.{1,80}):(\d{1,9})$/.exec(text ?? '') ?? [];
  const crop = crops.find((one) => one.key === key);
  const areaCm2 = Number(area);
  if (!crop || !(areaCm2 > 0 && areaCm2 <= mostCm2)) return null;
  return { key: crop.key, areaCm2, group: crop.cropGroup };
}
