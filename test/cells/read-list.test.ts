import { describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { measured, measuredList, optionalList, settingList } from "../../src/core/define";
import { choice, looseWeight, moisture, text, weight } from "../../src/core/quantities";
import { cellFunction, only } from "./call";

/** Shows what the lists of a call were read as. */
const show = (...lists: unknown[]) => JSON.stringify(lists.map((list) => (list === undefined ? "left out" : list)));

const one = cellFunction([measuredList("weights", weight)], show);
const two = cellFunction([measuredList("weights", weight), measuredList("moistures", moisture)], show);

describe("the shape of a list", () => {
  test("is a row, a column or a constant", () => {
    expect(only(one([[3], [4]]))).toBe("[[3,4]]");
    expect(only(one([[3, 4]]))).toBe("[[3,4]]");
    expect(only(one(3))).toBe("[[3]]");
  });

  test("is no table", () => {
    expect(
      only(
        one([
          [3, 4],
          [5, 6],
        ]),
      ),
    ).toBe("#VALUE! weights must be one row or one column; got 2 × 2 cells");
  });

  test("need not be the same for two lists of one length", () => {
    expect(only(two([[3], [4]], [[0.1, 0.2]]))).toBe("[[3,4],[0.1,0.2]]");
  });
});

describe("lengths", () => {
  test("that differ are refused with both of them", () => {
    expect(only(two([[3], [4], [5]], [[0.1], [0.2]]))).toBe(
      "#VALUE! moistures must have as many rows as weights; got 2 and 3",
    );
    expect(only(two([[3], [4]], [[0.1], [0.2], [0.3]]))).toBe(
      "#VALUE! weights must have as many rows as moistures; got 2 and 3",
    );
  });

  test("are counted after blanks at the end are cut off", () => {
    expect(only(two([[3], [4], [null], [""]], [[0.1], [0.2]]))).toBe("[[3,4],[0.1,0.2]]");
    expect(only(two([[3], [4]], [[0.1], [0.2], [""], [null], [null]]))).toBe("[[3,4],[0.1,0.2]]");
  });

  test("do not count the zeros that an older host sends for blank weights", () => {
    expect(only(one([[3], [4], [0], [0]]))).toBe("[[3,4]]");
    expect(only(one([[0], [0]]))).toBe("");
  });

  test("count a 0 where it is a value", () => {
    const probe = cellFunction([measuredList("dishes", looseWeight)], show);
    expect(only(probe([[3], [0], [0]]))).toBe("[[3,0,0]]");
  });
});

describe("blanks inside measured lists", () => {
  test("a row blank in every one of them is passed over", () => {
    expect(only(two([[3], [null], [5]], [[0.1], [""], [0.3]]))).toBe("[[3,5],[0.1,0.3]]");
    expect(only(two([[3], [0], [5]], [[0.1], [""], [0.3]]))).toBe("[[3,5],[0.1,0.3]]");
  });

  test("a row that misses one reading makes the call wait", () => {
    expect(only(two([[3], [null], [5]], [[0.1], [0.2], [0.3]]))).toBe("");
    expect(only(two([[3], [4], [5]], [[0.1], [0.2], [null]]))).toBe("");
  });

  test("nothing at all waits", () => {
    expect(only(one(null))).toBe("");
    expect(only(one([[null], [""]]))).toBe("");
  });
});

describe("a list of settings", () => {
  const probe = cellFunction([settingList("targets", moisture)], show);

  test("is refused with a blank in its middle, and when it is all blank", () => {
    expect(only(probe([[0.6], [null], [0.3]]))).toBe("#VALUE! targets must be filled in every row; row 2 is blank");
    expect(only(probe(null))).toBe("#VALUE! targets must hold at least one value; got a blank");
    expect(only(probe([[null], [null]]))).toBe("#VALUE! targets must hold at least one value; got a blank");
  });

  test("is cut at its end like any other", () => {
    expect(only(probe([[0.6], [0.3], [null]]))).toBe("[[0.6,0.3]]");
  });

  test("takes 0 as a value", () => {
    expect(only(probe([[0.6], [0]]))).toBe("[[0.6,0]]");
  });

  test("does not hide a reading that is still to come", () => {
    const both = cellFunction([measured("weight", weight), settingList("targets", moisture)], show);
    expect(only(both(null, [[0.6]]))).toBe("");
    expect(only(both(8, [[0.6]]))).toBe("[8,[0.6]]");
  });
});

describe("an optional list", () => {
  const kind = choice("kind", { moisture: [], water: ["水"] });
  const withNames = cellFunction([settingList("targets", moisture), optionalList("names", text, { gaps: true })], show);
  const withKinds = cellFunction(
    [settingList("targets", moisture), optionalList("kinds", kind, { oneForAll: true, fallback: "moisture" })],
    show,
  );
  const withErrors = cellFunction(
    [measuredList("weights", weight), optionalList("errors", looseWeight, { oneForAll: true })],
    show,
  );

  test("without a fallback is left out when it is blank", () => {
    expect(only(withNames([[0.6], [0.3]]))).toBe('[[0.6,0.3],"left out"]');
    expect(only(withNames([[0.6], [0.3]], null))).toBe('[[0.6,0.3],"left out"]');
    expect(only(withNames([[0.6], [0.3]], [[""], [null]]))).toBe('[[0.6,0.3],"left out"]');
    expect(only(withErrors([[3], [4]]))).toBe('[[3,4],"left out"]');
  });

  test("with gaps gives them as nothing, and may end early", () => {
    expect(only(withNames([[0.6], [0.3], [0.1]], [["pan"], [""], ["tray"]]))).toBe(
      '[[0.6,0.3,0.1],["pan",null,"tray"]]',
    );
    expect(only(withNames([[0.6], [0.3], [0.1]], [["pan"]]))).toBe('[[0.6,0.3,0.1],["pan",null,null]]');
    expect(only(withNames([[0.6], [0.3]], "pan"))).toBe('[[0.6,0.3],["pan",null]]');
  });

  test("with gaps may not go on after the others have ended", () => {
    expect(only(withNames([[0.6], [0.3]], [["pan"], [""], ["tray"]]))).toBe(
      "#VALUE! names must have as many rows as targets; got 3 and 2",
    );
  });

  test("of one value may stand for every row", () => {
    expect(only(withKinds([[0.6], [0.3], [0.1]], "water"))).toBe('[[0.6,0.3,0.1],["water","water","water"]]');
    expect(only(withKinds([[0.6], [0.3]], [["水"]]))).toBe('[[0.6,0.3],["water","water"]]');
    expect(only(withErrors([[3], [4]], 0.5))).toBe("[[3,4],[0.5,0.5]]");
    expect(only(withErrors([[3], [4]], 0))).toBe("[[3,4],[0,0]]");
  });

  test("with a fallback has it in every blank row, also when it is left out", () => {
    expect(only(withKinds([[0.6], [0.3]]))).toBe('[[0.6,0.3],["moisture","moisture"]]');
    expect(only(withKinds([[0.6], [0.3]], [["water"], [null]]))).toBe('[[0.6,0.3],["water","moisture"]]');
    expect(only(withKinds([[0.6], [0.3], [0.1]], [[0], ["water"], [0]]))).toBe(
      '[[0.6,0.3,0.1],["moisture","water","moisture"]]',
    );
  });

  test("of neither one value nor as many as the others is refused", () => {
    expect(only(withKinds([[0.6], [0.3], [0.1]], [["water"], ["water"]]))).toBe(
      "#VALUE! kinds must have as many rows as targets; got 2 and 3",
    );
    expect(only(withErrors([[3], [4]], [[0.5], [0.5], [0.5]]))).toBe(
      "#VALUE! weights must have as many rows as errors; got 2 and 3",
    );
  });

  test("without a fallback and without gaps is refused where it is blank inside", () => {
    expect(only(withErrors([[3], [4], [5]], [[0.5], [null], [0.5]]))).toBe(
      "#VALUE! errors must be filled in every row; row 2 is blank",
    );
  });
});

describe("what is wrong in a list", () => {
  test("is refused with its row", () => {
    expect(only(two([[3], [4]], [[0.1], [76]]))).toBe(
      "#VALUE! moistures must be from 0 up to, not including, 1 (76% or 0.76); got 76 in place 2 of the list",
    );
    expect(only(one([[3], ["4,5"]]))).toBe(
      '#VALUE! weights must be a weight above 0; got the text "4,5" (it looks like a number but is stored as text: type it again as a number) in place 2 of the list',
    );
    expect(only(one([[3], [true]]))).toBe("#VALUE! weights must be a weight above 0; got TRUE in place 2 of the list");
  });

  test("keeps the number of its row when a row above it was passed over", () => {
    expect(only(one([[3], [null], [-5]]))).toBe(
      "#VALUE! weights must be a weight above 0; got -5 in place 3 of the list",
    );
  });

  test("comes back unchanged when it is an error of the sheet, before anything else is refused", () => {
    const divided = new CellError("#DIV/0!");
    expect(two([[3], [-4]], [[0.1], [divided]])[0]?.[0]).toBe(divided);
    expect(two([[3], [4], [5]], [[divided]])[0]?.[0]).toBe(divided);
    expect(two([[3], [null]], [[divided], [null]])[0]?.[0]).toBe(divided);
  });
});
