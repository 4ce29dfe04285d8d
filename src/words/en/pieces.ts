import type { PieceMessages } from "../pieces";

/** The formulas that show an error on account of a cell. */
function becauseOfIt(first: string | undefined, followers: string | undefined): string {
  if (first === undefined) return "";
  const others = Number(followers) - 1;
  return others > 0
    ? ` ${first} and ${others} more show an error because of it.`
    : ` ${first} shows an error because of it.`;
}

export const englishPieces: PieceMessages = {
  joined: {
    list: (items) => items.join(", "),
    parts: (items) => items.join("; "),
    sentences: (sentences) => sentences.join(" "),
    withUnit: (words, unit) => `${words}, ${unit}`,
    told: (what, words) => `${what}: ${words}`,
    aside: (words, aside) => `${words} (${aside})`,
  },
  working: {
    none: "Select a cell that holds a TEA function, and its working appears here.",
    title: (address) => `How ${address} is worked out`,
    partOf: (address, shows, { row, rows, column, columns }) =>
      `${address} shows ${shows}: row ${row} of ${rows}, column ${column} of ${columns} of this answer.`,
    inSymbols: "In symbols",
    arguments: "What it was given",
    steps: "Step by step",
    source: "Source",
    noSource: "None: the arithmetic is its own definition.",
    sourceStatus: {
      read: "taken from the work itself",
      restated: "as another work that was read restates it",
      "from memory": "from memory, not looked up",
    },
    cautions: "Take care",
    docs: (id) => `The page of ${id}`,
    leftOut: "left out",
    countsAs: (value) => `left out, counts as ${value}`,
    blank: "blank",
    rowPicked: (row) => `row ${row} of the range is shown`,
    values: (count) => `${count} values`,
    fromCall: (id) => `what ${id} gives`,
    workedOut: "worked out by the workbook",
    notKnown: "the pane cannot know its value",
    notYet: "not asked yet",
    unknown: (texts) =>
      `The workbook works out ${texts}, and the pane cannot know what that comes to. The steps cannot go on from here; the answer is what the cell shows.`,
    unknownYet: (texts) => `The steps go on when Excel has worked out ${texts}.`,
    ask: "Let Excel work it out",
    askWhy:
      "Some of this formula only Excel can work out. For that a hidden name is added to the workbook for a moment and taken away again. No cell changes.",
    waits: "The answer waits for a weight or moisture that is still blank.",
    refused: (message) => `No answer: ${message}`,
    tooMany: (count) => `${count} more than the function takes.`,
    cellShows: (value) => `The cell shows ${value}.`,
    differs:
      "That is not what the last step gives: the cell may be waiting to be calculated again, or the formula holds something that changes by itself.",
    doesMore: "The formula does more with this than show it.",
    inYourUnit: "Weights are in the unit of your cells.",
    rowsOfTable: (shown, all) => `The first ${shown} of ${all} rows.`,
  },
  check: {
    intro:
      "Reads the sheet that is shown and lists what deserves another look. It changes nothing. A finding is a question, not a verdict.",
    button: "Check this sheet",
    running: "Reading the sheet…",
    none: (cells) => `Nothing stood out in ${cells} cells. That does not say that every number is right.`,
    found: (count, sheet) => `${count} ${count === 1 ? "finding" : "findings"} on ${sheet}`,
    goTo: (address) => `Go to ${address}`,
    why: "Why:",
    advice: "Try:",
    showAll: (count) => `Show all ${count}`,
    noClaim: "The check looks at figures. It cannot tell whether a lot is safe or fit for sale.",
    rules: {
      "moisture typed as a number of percent": {
        title: "Moisture above 100 %",
        what: ({ value }) => `${value} counts as ${value} times the weight of the leaf.`,
        why: "A moisture is a share of the weight: 76 % is 0.76 to the functions, and 76 is refused.",
        advice: "Type the number with its percent sign.",
      },
      "wet and dry basis mixed": {
        title: "Wet and dry basis mixed",
        what: ({ value, heading }) =>
          heading === undefined
            ? `${value} cannot be on wet basis, where leaf that is all water would be 100 %.`
            : `“${heading}” is on the other basis than the function that reads it takes.`,
        why: "50 % on dry basis is 33.3 % on wet basis. Mixed up, every weight that follows is wrong.",
        advice: "Turn dry basis into wet basis with TEA.WETBASIS before it goes into another function.",
      },
      "a moisture ten times off": {
        title: "A moisture that may be ten times off",
        what: ({ value, meant }) => `${value} stands here. Was it ${meant}?`,
        why: "Finished tea holds a few percent of water and fresh leaf mostly water, targets fall round by round, and this one lies ten times away.",
        advice: "Look at the point or comma of this cell, and at your note of the day.",
      },
      "a dry basis above 500 %": {
        title: "A dry basis above 500 %",
        what: ({ value, percent }) => `${value} counts as ${percent} of the dry matter. Was it ${value} %?`,
        why: "That is wetter than leaf is usually picked, and looks like a percentage without its sign.",
        advice: "If it is a percentage, type it again with the sign, such as 300%. Leave it if the leaf was that wet.",
      },
      "a time typed as a number": {
        title: "A time typed as a number",
        what: ({ value, hours, meant }) => `${value} counts as ${value} days, ${hours} hours. Was it ${meant}?`,
        why: "A time needs its colon: a plain number counts days.",
        advice: "Type it again with a colon, such as 9:30 for nine and a half hours.",
      },
      "kilograms among grams": {
        title: "Kilograms among grams",
        what: ({ value, meant }) => `${value} stands where ${meant} would fit the other weights.`,
        why: "A sum takes all the numbers of a column for one unit.",
        advice: "See which unit the scale showed, and type the weight in the unit of its column.",
      },
      "heavier after than before": {
        title: "Heavier after than before",
        what: ({ after, before }) => `${after} now, from ${before} before.`,
        why: "Leaf that airs, dries or is fired only gets lighter.",
        advice: "See whether the two weights were swapped, or a dish or another lot was on the scale.",
      },
      "usual loss outside its limits": {
        title: "Usual loss outside its limits",
        what: ({ value, largest, least }) =>
          largest === undefined
            ? `Usually ${value}, and ${least} at the least.`
            : `Usually ${value}, and ${largest} at the most.`,
        why: "What is lost usually lies between the least and the most that is lost.",
        advice: "Look at all the losses that stand here together: two may be swapped, or a point slipped.",
      },
      "a formula that reads another row": {
        title: "A formula that reads another row or column",
        what: ({ formula, like }) => `${formula} beside ${like}.`,
        why: "The formulas around it each read their own row or column in the same way; this one reads another.",
        advice: "Fill the formula again from the cell beside it, unless this was meant.",
      },
      "finished above fresh": {
        title: "More tea than leaf",
        what: ({ finished, fresh }) => `${finished} finished from ${fresh} fresh.`,
        why: "Leaf only gets lighter on its way to tea.",
        advice: "See whether the two were swapped, or one is in grams and the other in kilograms.",
      },
      "more dry matter out than in": {
        title: "More dry matter out than in",
        what: ({ out, come }) => `${out} of dry matter from ${come}, more than one point of moisture error explains.`,
        why: "Firing makes no dry matter, so one of the two weights or moistures is off.",
        advice: "Look at the fresh moisture first; then weigh again, and see whether two lots were mixed.",
      },
      "most of the dry matter gone": {
        title: "Most of the dry matter gone",
        what: ({ out, come }) => `${out} of dry matter is left of ${come}, less than half.`,
        why: "Firing takes water; dust and sift-outs take a few percent of the dry matter. A digit left out takes more.",
        advice: "Look at both weights and at both moistures, and whether a part of the lot went elsewhere.",
      },
      "outturn far from the others": {
        title: "Outturn far from your other lots",
        what: ({ outturn, z }) => `An outturn of ${outturn}, ${z} usual distances from the middle lot of this sheet.`,
        why: "It may be a slip of the pen, a dish on the scale, or a mix of units. Wet leaf gives a low outturn that is true.",
        advice: "Compare both weights with the notes of the day. Leave a true figure as it is.",
      },
      "not a step of the scale": {
        title: "A weight that the scale cannot show",
        what: ({ value, step }) => `${value} is no whole number of steps of ${step}.`,
        why: "The other weights here stand on steps of that size; a digit may have slipped.",
        advice: "Read the scale's note again, or leave it when another scale was used.",
      },
      "text that looks like a number": {
        title: "Text where a number belongs",
        what: ({ value, first, followers }) => `“${value}” is text.${becauseOfIt(first, followers)}`,
        why: "A sum passes it over without a word, and the functions refuse it.",
        advice: "Type it again as a number, without a unit or a space behind it.",
      },
      "a TEA function with an error": {
        title: "A TEA function with an error",
        what: ({ code, message, first, followers }) => {
          const said = message === undefined ? `${code}` : `${code}: ${message}`;
          return first === undefined ? said : `${said}.${becauseOfIt(first, followers)}`;
        },
        why: "Every cell that builds on it shows the error too.",
        advice: "Look at the argument that the message names.",
      },
      "waits for a weight": {
        title: "Waits for a weight",
        what: ({ cell }) => (cell === undefined ? "Fresh weight without a finished weight." : `${cell} waits for it.`),
        why: "A lot in progress, or a weight that was never written down.",
        advice: "Fill it in when it is known. Until then the answer stays empty and no sum breaks.",
      },
      "a number among formulas": {
        title: "A number in a column of formulas",
        what: ({ value, formula }) => `${value} stands where the cells around it hold ${formula}.`,
        why: "A number that was typed over a formula does not follow when its inputs change.",
        advice: "Fill the formula down again, unless the number was meant.",
      },
    },
  },
  picture: {
    table: "The same numbers as a table",
    lotTitle: "Dry matter and water",
    lot: (bars) => `Bars of dry matter and water. ${bars}.`,
    bar: (name, weight, dry) => `${name}: ${weight}, ${dry} of it dry matter`,
    chargesTitle: "Charges",
    charges: (charges, heaviest) => `${charges} ${charges === 1 ? "charge" : "charges"}; the heaviest is ${heaviest}.`,
    overLimit: (count, limit) => `${count} above the limit of ${limit}.`,
    withinLimit: (limit) => `None passes the limit of ${limit}.`,
    outturnTitle: "Outturn by lot",
    outturn: (lots, lowest, highest) => `Outturn of ${lots} lots, from ${lowest} to ${highest}.`,
    flagged: (names) => `Flagged: ${names}.`,
    noneFlagged: "None is flagged.",
    tooFewToFlag: "Unusual lots are flagged from five finished lots on.",
    stage: "Stage",
    dry: "Dry matter",
    water: "Water",
    weight: "Weight",
    charge: "Charge",
    load: "Load",
    limit: "Limit",
    lotName: "Lot",
    outturnName: "Outturn",
    flag: "Flag",
    flags: { high: "high", low: "low", "more out than in": "more out than in", "": "" },
    tooHeavy: "above the limit",
    dayTitle: "The day by pans",
    day: (firings, pans, hours) =>
      `${firings} ${firings === 1 ? "firing" : "firings"} in ${pans} ${pans === 1 ? "pan" : "pans"}, ${hours}.`,
    dayOverruns: (count) =>
      count === 0 ? "No rest runs over." : count === 1 ? "One rest runs over." : `${count} rests run over.`,
    dayBreak: (from, to) => `Break from ${from} to ${to}.`,
    overruns: "overruns",
    pan: "Pan",
    start: "Start",
    end: "End",
    dryingTitle: "Weight as it dries",
    drying: (readings, weights, target) =>
      `${readings} ${readings === 1 ? "reading" : "readings"}, ${weights}; the target is ${target}.`,
    dryingRange: (early, late) => `It comes between ${early} and ${late}.`,
    dryingLikely: (likely) => `Likely at ${likely}.`,
    time: "Time",
    target: "target",
    fillsTitle: "Net weights against what the packages state",
    fills: (packages, weights, nominal) =>
      `${packages} ${packages === 1 ? "package" : "packages"}, ${weights}; they state ${nominal}.`,
    fillsShort: (count, least) => `${count} below ${least}, short by more than the tolerance.`,
    package: "Package",
    nominal: "stated",
    short: "short",
  },
};
