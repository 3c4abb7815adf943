/** An instant as a date-and-time field shows it where the society lives. */
export function wallTime(instant: Date, timeZone: string): string {
  return instant.toLocaleString('sv-SE', { timeZone }).replace(' ', 'T').slice(0, 16);
}
