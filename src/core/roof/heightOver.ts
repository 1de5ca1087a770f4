/** Plumb, from the plate to the plane of the top edges, at the reference face. Inches. */
export const heightOver = (
  depth: number,
  { m, seat }: { readonly m: number; readonly seat: number },
): number => depth * Math.sqrt(1 + m * m) - seat * m;
