/** A seeded chance, so that the same seed makes the same society. Mulberry32, public domain; from memory. */
export function chanceOf(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    /** A whole number from least to most. */
    whole: (least: number, most: number) => least + Math.floor(next() * (most - least + 1)),
    /** One of a list. */
    one: <Item>(items: readonly Item[]): Item => items[Math.floor(next() * items.length)] as Item,
  };
}

export type Chance = ReturnType<typeof chanceOf>;
