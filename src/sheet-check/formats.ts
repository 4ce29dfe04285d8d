/** Whether a number format shows a date or a time: the number is one then, and no weight. */
export function isDateFormat(format: string): boolean {
  const elapsed = /\[(h+|m+|s+)\]/i.test(format);
  const plain = withoutWords(format);
  return elapsed || (!/general/i.test(plain) && /[ymdhs]/i.test(plain));
}

/** Whether a number format shows hours and minutes. */
export const isTimeFormat = (format: string): boolean => isDateFormat(format) && /h|\[m+\]|\[s+\]/i.test(format);

/** Whether a number format shows a day, with a time behind it or without. */
export const isDayFormat = (format: string): boolean => isDateFormat(format) && /[yd]/i.test(withoutWords(format));

const withoutWords = (format: string): string => format.replace(/"[^"]*"|\[[^\]]*\]|\\.|_./g, "");
