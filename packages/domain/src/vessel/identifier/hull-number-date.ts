/**
 * The last four characters of a hull identification number: when the hull was certified or built, and its model year.
 *
 * 33 CFR 181.25(c) and (d), read: month letter A to L (I among them), last digit of the year, two digits of the model
 * year. The forms of 1972 to 1984 second-hand, from two public charts that agree: month and year in digits ("straight
 * year"), or M, two digits of the model year and a letter from A for August to L for July ("model year").
 */

export type HullDateForm = 'current' | 'straight_year' | 'model_year';

export type HullDate = {
  readonly form: HullDateForm;
  /** Months 1 to 12. */
  readonly built: { readonly year: number; readonly month: number };
  /** `null` in the straight-year form, which has none. */
  readonly modelYear: number | null;
  readonly doubts: readonly string[];
};

/** `null` when the four characters are in none of the forms. */
export function readHullDate(four: string): HullDate | null {
  if (/^[A-L]\d{3}$/.test(four)) return currentForm(four);
  if (/^(0[1-9]|1[0-2])\d{2}$/.test(four)) return straightYear(four);
  if (/^M\d{2}[A-L]$/.test(four)) return modelYearForm(four);
  return null;
}

const A = 'A'.charCodeAt(0);

/** Our own rule: two digits from 70 on lie in the 1900s. */
function fullYear(twoDigits: string): number {
  const year = Number(twoDigits);
  return year >= 70 ? 1900 + year : 2000 + year;
}

/**
 * The year has its last digit only: ours is the one year from six before the model year to three after it that ends
 * so. Own rule, no source.
 */
function currentForm(four: string): HullDate {
  const modelYear = fullYear(four.slice(2));
  const latest = modelYear + 3;
  const year = latest - ((latest - Number(four[1])) % 10);
  const built = { year, month: four.charCodeAt(0) - A + 1 };
  return { form: 'current', built, modelYear, doubts: [...farApart(year, modelYear), ...beforeCurrent(year)] };
}

function farApart(year: number, modelYear: number): string[] {
  if (Math.abs(year - modelYear) <= 2) return [];
  return [
    `The year digit ${year % 10} and the model year ${modelYear} do not lie within 2 years of each other; ${year} is our reading, another decade may be meant.`,
  ];
}

function beforeCurrent(year: number): string[] {
  return year < 1984 ? [`It reads as ${year}, but this form came into use in 1984.`] : [];
}

function straightYear(four: string): HullDate {
  const built = { year: fullYear(four.slice(2)), month: Number(four.slice(0, 2)) };
  return { form: 'straight_year', built, modelYear: null, doubts: outOfUse(built) };
}

/** The model year begins in August of the year before. */
function modelYearForm(four: string): HullDate {
  const modelYear = fullYear(four.slice(1, 3));
  const fromAugust = four.charCodeAt(3) - A;
  const built =
    fromAugust < 5 ? { year: modelYear - 1, month: fromAugust + 8 } : { year: modelYear, month: fromAugust - 4 };
  return { form: 'model_year', built, modelYear, doubts: outOfUse(built) };
}

function outOfUse({ year, month }: HullDate['built']): string[] {
  if (year < 1972 || (year === 1972 && month < 11)) {
    return [`It reads as ${year}, but there was no standard form before 1 November 1972.`];
  }
  return year > 1984 ? [`It reads as ${year}, but this form was in use from 1972 to 1984.`] : [];
}
