/** A number as an xs:double: NaN for one that is not known, and for a sum that has left the range of numbers. */
export const numberText = (number: number | undefined): number | 'NaN' =>
  number === undefined || !Number.isFinite(number) ? 'NaN' : number;
