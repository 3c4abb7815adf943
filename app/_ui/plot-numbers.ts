/** The plots of a holding as they are named together: "A4, B4". */
export function plotNumbers(plots: readonly { readonly number: string }[]): string {
  return plots.map(({ number }) => number).join(', ');
}
