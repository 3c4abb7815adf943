/** Where the tests of a delivery stand, or one's own. */
export function testsAt(society: string, deliveryId: string | null): string {
  return deliveryId === null ? `/${society}/ground/residue` : `/${society}/deliveries/${deliveryId}/residue`;
}

/** Where one test stands. */
export function testAt(society: string, test: { readonly testId: string; readonly deliveryId: string | null }): string {
  return `${testsAt(society, test.deliveryId)}/${test.testId}`;
}
