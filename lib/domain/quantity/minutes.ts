/**
 * A length of time as it is said, to the nearest minute; something is never no time.
 *
 * @param minutes  ≥ 0, up to 10⁹
 * @throws RangeError otherwise
 * @example        formatMinutes(150) → '2 h 30 min'; formatMinutes(0.2) → 'under 1 min'
 */
export function formatMinutes(minutes: number): string {
  if (!(minutes >= 0 && minutes <= 1e9)) throw new RangeError(`a time is a number from 0: ${minutes}`);
  const whole = Math.round(minutes);
  if (whole === 0 && minutes > 0) return 'under 1 min';
  if (whole < 60) return `${whole} min`;
  const hours = `${Math.floor(whole / 60).toLocaleString('en-GB')} h`;
  return whole % 60 === 0 ? hours : `${hours} ${whole % 60} min`;
}
