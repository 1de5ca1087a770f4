/** A length in inches. Plain numbers do not pass for one. */
export type Inch = number & { readonly unit: 'in' };

export const inch = (value: number): Inch => value as Inch;

/** Exact by definition since 1959: 25.4 mm to the inch. */
export const mmPerInch = 25.4;
