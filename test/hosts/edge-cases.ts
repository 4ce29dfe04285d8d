import type { EdgeCase } from "./calls";

const blank = [[null]];
const notAvailable = { error: "#N/A" };
const divided = { error: "#DIV/0!" };
const noNumber = { error: "#NUM!" };
const noValue = { error: "#VALUE!" };
const moisture = "from 0 up to, not including, 1 (76% or 0.76)";
const storedAsText = "(it looks like a number but is stored as text: type it again as a number)";

const refused = (message: string) => ({ error: "#VALUE!", message });
const inEachColumn = (loss: string) =>
  new Array(4).fill(refused(`loss must be at most 0.25, the moisture of the leaf, as a loss of ${loss}; got 0.5`));
const silent = (message: string) => ({ error: "#N/A", message });

/** Most numbers are sums of powers of two, so that every answer can be had by hand to the last digit. */
export const edgeCases: readonly EdgeCase[] = [
  // Blanks, and what is left out.
  { name: "a reading that is blank", id: "TARGETWEIGHT", given: [blank, 0.75, 0.5], gives: "" },
  {
    name: "a setting that is blank",
    id: "TARGETWEIGHT",
    given: [320, 0.75, blank],
    gives: refused(`targetMoisture must be ${moisture}; got a blank`),
  },
  {
    name: "a blank in the middle of a column",
    id: "TARGETWEIGHT",
    given: [[[320], [null], [200]], 0.75, 0.5],
    gives: [[160], [""], [100]],
  },
  { name: "a weight of 0, as older hosts send for a blank", id: "TARGETWEIGHT", given: [0, 0.75, 0.5], gives: "" },
  {
    name: "every cell blank",
    id: "OUTTURN",
    given: [
      [[null], [null]],
      [[null], [null]],
    ],
    gives: [[""], [""]],
  },
  { name: "an optional argument left out at the end", id: "OVENMOISTURE", given: [32, 16], gives: 0.5 },
  {
    name: "an optional argument left out in the middle",
    id: "CHARGESPLIT",
    given: [1000, 300, null, 1],
    gives: [[334], [333], [333]],
  },
  { name: "an optional argument left out twice", id: "SCALEERROR", given: [2, null, null, true, 1], gives: 1 },
  { name: "an optional argument that is a blank cell", id: "MOISTURENOW", given: [320, 0.75, 160, blank], gives: 0.5 },
  {
    name: "two optional lists left out before the last argument",
    id: "DRYINGSTEPS",
    given: [320, 0.75, 0.5, null, null, false],
    gives: [
      ["start", 320, 0.75, 3, 0, 0, 1],
      ["step 1", 160, 0.5, 1, 160, 160, 0.5],
    ],
  },
  { name: "a table that waits", id: "LOSSMEANINGS", given: [blank, 0.75, 0.5], gives: "" },
  // Errors that come in.
  {
    name: "an error in a cell",
    id: "TARGETWEIGHT",
    given: [notAvailable, 0.75, 0.5],
    gives: { error: "#N/A", message: "" },
  },
  {
    name: "a division by zero",
    id: "TARGETWEIGHT",
    given: [320, divided, 0.5],
    gives: { error: "#DIV/0!", message: "" },
  },
  { name: "a number that there is not", id: "DRYBASIS", given: [noNumber], gives: { error: "#NUM!", message: "" } },
  { name: "a #VALUE! that is not ours", id: "DRYBASIS", given: [noValue], gives: { error: "#VALUE!", message: "" } },
  {
    name: "an error before a refusal",
    id: "TARGETWEIGHT",
    given: [-1, 0.75, notAvailable],
    gives: { error: "#N/A", message: "" },
  },
  {
    name: "an error in the middle of a column",
    id: "TARGETWEIGHT",
    given: [[[320], [divided], [200]], 0.75, 0.5],
    gives: [[160], [divided], [100]],
  },
  {
    name: "an error in a list",
    id: "DRYINGSTEPS",
    given: [320, 0.75, [[0.5], [notAvailable]]],
    gives: { error: "#N/A", message: "" },
  },
  {
    name: "an error in a row of a row's answer",
    id: "FINISHEDBAND",
    given: [[[400], [notAvailable], [200]], 0.75, 0, null, null, 0.25, 0.5, 0, 0, 0],
    gives: [
      [50, 100, 75],
      [notAvailable, notAvailable, notAvailable],
      [25, 50, 37.5],
    ],
  },
  // Text, yes and no, words.
  {
    name: "a percentage as text",
    id: "TARGETWEIGHT",
    given: [320, "75%", 0.5],
    gives: refused(`moisture must be ${moisture}; got the text "75%" ${storedAsText}`),
  },
  {
    name: "a decimal comma as text",
    id: "DRYMATTER",
    given: ["1,5", 0.5],
    gives: refused(`weight must be a weight above 0; got the text "1,5" ${storedAsText}`),
  },
  {
    name: "digits of full width",
    id: "DRYMATTER",
    given: ["３２０", 0.5],
    gives: refused(`weight must be a weight above 0; got the text "３２０" ${storedAsText}`),
  },
  {
    name: "a date as text",
    id: "DRYMATTER",
    given: ["1/2", 0.5],
    gives: refused(`weight must be a weight above 0; got the text "1/2" ${storedAsText}`),
  },
  {
    name: "a word with quotes in it",
    id: "DRYMATTER",
    given: ['the "big" pan', 0.5],
    gives: refused('weight must be a weight above 0; got the text "the "big" pan"'),
  },
  {
    name: "a space",
    id: "DRYMATTER",
    given: [" ", 0.5],
    gives: refused(
      'weight must be a weight above 0; got the text " " (the cell looks empty but holds a space: clear it)',
    ),
  },
  {
    name: "TRUE for a number",
    id: "DRYMATTER",
    given: [true, 0.5],
    gives: refused("weight must be a weight above 0; got TRUE"),
  },
  {
    name: "FALSE for a number",
    id: "DRYMATTER",
    given: [[[false], [64]], 0.5],
    gives: [[refused("weight must be a weight above 0; got FALSE")], [32]],
  },
  {
    name: "FALSE for the headings",
    id: "LOSSMEANINGS",
    given: [320, 0.75, 0, false],
    gives: [
      ["water", 320, 0, 0.75, 3],
      ["weight", 320, 0, 0.75, 3],
      ["points", 320, 0, 0.75, 3],
    ],
  },
  {
    name: "0 for the headings",
    id: "LOSSMEANINGS",
    given: [320, 0.75, 0, 0],
    gives: [
      ["water", 320, 0, 0.75, 3],
      ["weight", 320, 0, 0.75, 3],
      ["points", 320, 0, 0.75, 3],
    ],
  },
  { name: "a word in another case, with a space", id: "FIRINGTARGET", given: [320, 0.75, 0.25, "WATER "], gives: 260 },
  {
    name: "a word that is not one of them",
    id: "FIRINGTARGET",
    given: [320, 0.75, 0.25, "mass"],
    gives: refused('lossOf must be one of "water", "weight", "points"; got the text "mass"'),
  },
  {
    name: "words in a row",
    id: "FIRINGTARGET",
    given: [320, 0.75, 0.25, [["weight", "water", "points"]]],
    gives: [[240, 260, 160]],
  },
  {
    name: "labels that are numbers, texts in Chinese and yes or no",
    id: "DRYINGSTEPS",
    given: [320, 0.75, [[0.75], [0.75], [0.5]], null, [[7], ["炒青"], [true]], false],
    gives: [
      ["start", 320, 0.75, 3, 0, 0, 1],
      ["7", 320, 0.75, 3, 0, 0, 1],
      ["炒青", 320, 0.75, 3, 0, 0, 1],
      ["TRUE", 160, 0.5, 1, 160, 160, 0.5],
    ],
  },
  // Ranges.
  {
    name: "a column by a row",
    id: "DRYMATTER",
    given: [[[100], [200]], [[0.5, 0.75]]],
    gives: [
      [50, 25],
      [100, 50],
    ],
  },
  {
    name: "a block and a constant",
    id: "DRYMATTER",
    given: [
      [
        [100, 200],
        [300, 400],
      ],
      0.5,
    ],
    gives: [
      [50, 100],
      [150, 200],
    ],
  },
  {
    name: "a block by a row",
    id: "DRYMATTER",
    given: [
      [
        [100, 200],
        [300, 400],
      ],
      [[0.5, 0.75]],
    ],
    gives: [
      [50, 50],
      [150, 100],
    ],
  },
  {
    name: "columns of different length",
    id: "DRYMATTER",
    given: [
      [[100], [200], [300]],
      [[0.5], [0.75]],
    ],
    gives: refused("moisture must have the size of weight; got 2 × 1 and 3 × 1 cells"),
  },
  {
    name: "units down and across",
    id: "CONVERTWEIGHT",
    given: [[[1], [2]], "kg", [["g", "kg"]]],
    gives: [
      [1000, 1],
      [2000, 2],
    ],
  },
  {
    name: "refusals beside answers",
    id: "TARGETWEIGHT",
    given: [[[320], [-1], [200]], 0.75, 0.5],
    gives: [[160], [refused("weight must be a weight above 0; got -1")], [100]],
  },
  {
    name: "a refusal inside a table",
    id: "LOSSMEANINGS",
    given: [320, 0.25, 0.5, false],
    gives: [
      ["water", 280, 40, 1 / 7, 1 / 6],
      ["weight", ...inEachColumn("weight")],
      ["points", ...inEachColumn("points")],
    ],
  },
  {
    name: "a range where one cell is due",
    id: "LOSSMEANINGS",
    given: [[[320], [200]], 0.75, 0.5],
    gives: refused("weight must be one cell; got 2 × 1 cells"),
  },
  {
    name: "a row where a column is due",
    id: "FINISHEDBAND",
    given: [[[400, 200]], 0.75, 0],
    gives: refused("freshWeight must be one cell or one column; got 1 × 2 cells"),
  },
  // Lists and books.
  {
    name: "a list in a row beside one in a column",
    id: "BLENDMOISTURE",
    given: [[[100], [300]], [[0.5, 0.25]]],
    gives: 0.3125,
  },
  {
    name: "rows passed over",
    id: "BLENDMOISTURE",
    given: [
      [[100], [null], [300], [null]],
      [[0.5], [null], [0.25], [null]],
    ],
    gives: 0.3125,
  },
  {
    name: "a list that waits for a reading",
    id: "BLENDMOISTURE",
    given: [
      [[100], [300]],
      [[0.5], [null]],
    ],
    gives: "",
  },
  {
    name: "lists of different length",
    id: "BLENDMOISTURE",
    given: [[[100], [300]], [[0.5]]],
    gives: refused("moistures must have as many rows as weights; got 1 and 2"),
  },
  {
    name: "a word in a list",
    id: "BLENDMOISTURE",
    given: [
      [[100], ["leaf"]],
      [[0.5], [0.25]],
    ],
    gives: refused('weights must be a weight above 0; got the text "leaf" in place 2 of the list'),
  },
  {
    name: "a block for a list",
    id: "SPLITWEIGHT",
    given: [
      64,
      [
        [1, 1],
        [1, 1],
      ],
      1,
    ],
    gives: refused("portions must be one row or one column; got 2 × 2 cells"),
  },
  {
    name: "a book with headings and blank rows",
    id: "SEASONTABLE",
    given: [
      [["plot"], ["high"], ["low"], ["high"], [null]],
      [["fresh"], [400], [200], [112], [null]],
      [["finished"], [100], [50], [28], [null]],
      null,
      null,
      false,
    ],
    gives: [
      ["high", 2, 0, 0, 512, 128, 0.25, 4, "", "", 128 / 178],
      ["low", 1, 0, 0, 200, 50, 0.25, 4, "", "", 50 / 178],
      ["total", 3, 0, 0, 712, 178, 0.25, 4, "", "", 1],
    ],
  },
  {
    name: "an error inside a book leaves its row out",
    id: "SEASONTABLE",
    given: [[["high"], ["low"]], [[400], [notAvailable]], [[100], [50]], null, null, false],
    gives: [
      ["high", 1, 0, 0, 400, 100, 0.25, 4, "", "", 1],
      ["low", 0, 0, 1, 0, 0, "", "", "", "", 0],
      ["total", 1, 0, 1, 400, 100, 0.25, 4, "", "", 1],
      [
        "rows left out: 1, the first because freshWeights must be a weight above 0; got #N/A in place 2 of the list",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
      ],
    ],
  },
  // Times: the spreadsheet's days, as its clock shows them.
  { name: "a time of day", id: "TURNTIMES", given: [0.5, 0.25, 0.125], gives: [[0.625]] },
  { name: "a date with a time", id: "TURNTIMES", given: [45000.5, 0.25, 0.125], gives: [[45000.625]] },
  // Numbers at their bounds.
  { name: "the greatest weight", id: "DRYMATTER", given: [1e12, 0.5], gives: 5e11 },
  { name: "the least weight", id: "DRYMATTER", given: [1e-12, 0.5], gives: 5e-13 },
  {
    name: "above the greatest weight",
    id: "DRYMATTER",
    given: [1e13, 0.5],
    gives: refused("weight must be a weight above 0; got 10000000000000"),
  },
  {
    name: "a number near the greatest of all",
    id: "DRYMATTER",
    given: [1.7e308, 0.5],
    gives: refused("weight must be a weight above 0; got 1.7e+308"),
  },
  { name: "a moisture just below 1", id: "DRYMATTER", given: [1, 1 - 2 ** -53], gives: 2 ** -53 },
  { name: "a moisture of 1", id: "DRYMATTER", given: [1, 1], gives: refused(`moisture must be ${moisture}; got 1`) },
  { name: "a moisture of 0", id: "DRYBASIS", given: [0], gives: 0 },
  { name: "numbers that no decimal shows whole", id: "DRYMATTER", given: [1 / 3, 2 / 3], gives: 1 / 9 },
  {
    name: "a negative weight",
    id: "DRYMATTER",
    given: [-0.5, 0.5],
    gives: refused("weight must be a weight above 0; got -0.5"),
  },
  // Refusals of sound data.
  {
    name: "below the dry matter",
    id: "MOISTURENOW",
    given: [320, 0.75, 64],
    gives: refused("weightNow must be at least 80, the dry matter; got 64"),
  },
  {
    name: "readings that disagree",
    id: "OVENMEAN",
    given: [[[0.5], [0.75]]],
    gives: silent("moistures must agree within 0.003; got a spread of 0.25"),
  },
  {
    name: "too few past lots",
    id: "LOTFLAG",
    given: [128, 32, [[400]], [[100]]],
    gives: silent("pastFreshWeights must hold at least 5 finished lots; got 1"),
  },
  {
    name: "too few past lots for a row",
    id: "FINISHEDFORECAST",
    given: [128, [[400]], [[100]]],
    gives: [new Array(3).fill(silent("pastFreshWeights must hold at least 3 finished lots; got 1"))],
  },
];
