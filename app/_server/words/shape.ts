/** The numbers and names that came with a refusal. */
type Numbers = Readonly<Record<string, string | number>>;

/** One sentence for each code of an area; leaving one out does not compile. */
export type Words<Code extends string> = Record<Code, (numbers: Numbers) => string>;
