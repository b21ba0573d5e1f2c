/** Money: decimal text outside, whole hundredths inside. */
type Money = { readonly amount: string; readonly currency: string };
type Minor = { readonly minor: number; readonly currency: string };

/** Exact: at most 13 digits before the point and 2 after it stay below 2^53. */
export function toMinor({ amount, currency }: Money): Minor {
  const [whole = '', fraction = ''] = amount.split('.');
  return { minor: Number(whole + fraction.padEnd(2, '0')), currency };
}

export function fromMinor({ minor, currency }: Minor): Money {
  const digits = String(minor).padStart(3, '0');
  return { amount: `${digits.slice(0, -2)}.${digits.slice(-2)}`, currency };
}
