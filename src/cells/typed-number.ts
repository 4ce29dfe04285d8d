/**
 * What someone can have meant by digits with marks between them, as plain numbers such as "1234.5": one reading where
 * there is no doubt, two where a comma may be a decimal mark or one for thousands, none where it is no number.
 */
export function typedNumbers(text: string): readonly string[] {
  const [, sign = "", digits = ""] = /^([-−+]?)\s*([\d.,'’\s]+)$/.exec(text.normalize("NFKC").trim()) ?? [];
  const readings = readingsOf(digits.trim());
  return readings.map((reading) => (sign === "-" || sign === "−" ? `-${reading}` : reading));
}

/** Thousands in groups of three, all with the same mark. */
const grouped = /^[1-9]\d{0,2}(?:([.,'’\s])\d{3})(?:\1\d{3})*$/;
const plain = /^(?:\d+\.?\d*|\.\d+)$/;

function readingsOf(digits: string): readonly string[] {
  const mark = digits.includes(",") && digits.lastIndexOf(",") > digits.lastIndexOf(".") ? "," : ".";
  const [whole = "", fraction, ...more] = digits.split(mark);
  const asGroups = grouped.test(digits) ? digits.replace(/\D/g, "") : undefined;
  const isMarkTwice = more.length > 0;
  const wholeDigits = grouped.test(whole) ? whole.replace(/\D/g, "") : whole;
  const asDecimal = fraction === undefined ? wholeDigits : `${wholeDigits}.${fraction}`;
  const decimals = !isMarkTwice && plain.test(asDecimal) ? [asDecimal] : [];
  // 1.234 is a weight in kilograms to the gram: only a comma is in doubt.
  if (asGroups === undefined || (mark === "." && decimals.length > 0)) return decimals;
  return [...new Set([asGroups, ...decimals])];
}
