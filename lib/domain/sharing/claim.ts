/** What a holding asks of a delivery, what its due ground needs, and what it is owed from before. */
export type Claim = {
  readonly id: string;
  /** Loads asked for; whole number ≥ 0. */
  readonly asked: number;
  /** Loads its due ground justifies; whole number ≥ 0. */
  readonly need: number;
  /** Opening credit in millionths of a load; whole number of either sign. */
  readonly creditMillionths: number;
  /** Loads it has already; whole number ≥ 0, at the heap's re-measuring or settlement. */
  readonly collected?: number;
  /** Its place in the order of coming where it came after booking had closed; whole number ≥ 0, no two alike. */
  readonly late?: number;
};

/** One whole load in the unit that credit is kept in. */
export const loadMillionths = 1_000_000;

// Half of what a number holds exactly, so that a credit and a whole heap still add up to the millionth.
const mostMillionths = 2 ** 52;

/** @throws RangeError on a negative, fractional or repeated value, or one too great to be exact in millionths */
export function checkClaims(loads: number, claims: readonly Claim[]): void {
  whole('loads in the heap', loads);
  if (loads * loadMillionths > mostMillionths) throw new RangeError(`a heap of ${loads} loads is too great to share`);
  for (const { id, asked, need, creditMillionths, collected = 0, late = 0 } of claims) {
    whole(`asked by ${id}`, asked);
    whole(`need of ${id}`, need);
    whole(`collected by ${id}`, collected);
    whole(`place of ${id} among the late`, late);
    if (!Number.isSafeInteger(creditMillionths) || Math.abs(creditMillionths) > mostMillionths)
      throw new RangeError(`credit of ${id} is not in whole millionths: ${creditMillionths}`);
  }
  if (new Set(claims.map(({ id }) => id)).size < claims.length) throw new RangeError('a claim is listed twice');
  const late = claims.flatMap((claim) => claim.late ?? []);
  if (new Set(late).size < late.length) throw new RangeError('two late claims came at one place');
  const collected = claims.reduce((sum, claim) => sum + (claim.collected ?? 0), 0);
  if (collected > loads) throw new RangeError(`more was collected (${collected}) than the heap held (${loads})`);
}

function whole(what: string, value: number): void {
  if (!Number.isSafeInteger(value) || value < 0)
    throw new RangeError(`${what} is not a whole number of loads: ${value}`);
}
