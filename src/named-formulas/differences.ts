/** Where a named formula may give another number than the add-in, how far, and why; the tests allow this and no more. */
interface Difference {
  /** As a share of the largest number in the row of the answer. */
  readonly share: number;
  readonly why: string;
}

const quantile =
  "Student's quantile is the spreadsheet's own T.INV.2T; the add-in halves towards its own. Held to this for a confidence from 10 % to 99.99 %: beyond it T.INV.2T of the engine we compare with is itself a hundredth off.";
const roots = "the root of a sum of squares is rounded at each step; the add-in's Math.hypot keeps what rounding drops";

export const differences: Readonly<Record<string, Difference>> = {
  FINISHEDBAND: { share: 1e-15, why: roots },
  FINISHEDCHECK: {
    share: 0,
    why: `${roots}; its answer is a word, and could differ only where a weight meets a limit in the last digit`,
  },
  BUDCOUNT: { share: 1e-9, why: quantile },
  SAMPLEMEAN: { share: 1e-9, why: quantile },
  PACKCHECK: {
    share: 1e-12,
    why: "Student's quantile is the spreadsheet's own T.INV.2T; the add-in halves towards its own",
  },
  STAGEBALANCE: {
    share: 0,
    why: "the number in the note of a row whose dry matter grows is rounded to ten digits by the spreadsheet, which may choose the other one of two digits that are as near, and is written as the spreadsheet writes numbers",
  },
};

/** What holds for every named formula, beside. */
export const everywhere: readonly string[] = [
  "A refusal is its code alone, #VALUE! or #N/A: only the add-in says in words which argument must be what.",
  "A spreadsheet compares fifteen digits: a moisture of 0.9999999999999999 counts as 1 and is refused, and numbers smaller than a billionth may count as 0.",
  "Spaces in the middle of a word of a choice count as one, and only plain spaces around it are passed over.",
  "A list that is no range but one empty text, or a 0 where a weight or a count must stand, counts as one blank cell; the add-in takes it for no row at all.",
  "Of SAMPLEMEAN, more than a thousand readings needed may come out a hundred-thousandth otherwise, where the spreadsheet's T.INV.2T does.",
  "A number that stands for a name is written as the spreadsheet writes it.",
  "Digits typed as text beside a row in which nothing was weighed are passed over with the row; the add-in refuses them.",
];
