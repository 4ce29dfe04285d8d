/** How a named formula reads its lists: by the rules of cells/read-list.ts, out of the same parameters. */
import type { Parameter } from "../core/define";
import { reading } from "./reading";
import { literal } from "./words";

/**
 * Declarations for a LET, with a comma behind each: of every list `<name>List`, a column of what was read in the rows
 * that count, and `listsSay`, which is 0, or an error, or `""` while readings are missing.
 */
export function listFrame(lists: readonly Parameter[]): string {
  if (lists.length === 0) return "";
  if (!lists.some(({ optional, gaps }) => !optional && !gaps)) {
    throw new Error("a list without gaps that has to be there must say how many rows there are");
  }
  const declarations = [
    ...lists.flatMap(asGiven),
    `listed,MAX(${lists
      .filter(({ gaps }) => !gaps)
      .map(ownRows)
      .join(",")})`,
    ...lists.map((list) => `${list.name}Rows,${rowed(list)}`),
    ...kept(lists),
    ...lists.map((list) => `${list.name}List,${filled(list, valuesOf(list, lists))}`),
    `listsSay,${saying(lists)}`,
  ];
  return declarations.map((declaration) => `${declaration},`).join("");
}

const asGiven = ({ name, quantity }: Parameter): string[] => [
  `${name}In,IF(ISOMITTED(${name}),"",_TEA_CELLS(${name}))`,
  `${name}Held,TOCOL(VSTACK(${name}In))`,
  `${name}Read,MAP(${name}Held,LAMBDA(held,${reading(quantity, "held")}))`,
  `${name}Full,_TEA_FILLED(${name}Read)`,
  `${name}Long,IF(ISOMITTED(${name}),0,_TEA_ROWS(${name}Held))`,
];

/** One value that stands for every row has no say in how many there are. */
const ownRows = ({ name, oneForAll }: Parameter): string =>
  oneForAll ? `IF(${name}Long=1,0,${name}Full)` : `${name}Full`;

const rowed = ({ name, oneForAll }: Parameter): string => {
  const rows = `_TEA_ROWED(${name}Read,listed)`;
  return oneForAll
    ? `IF(${name}Long=1,MAKEARRAY(MAX(1,listed),1,LAMBDA(place,across,INDEX(${name}Read,1,1))),${rows})`
    : rows;
};

const isDeciding = ({ blank, optional }: Parameter): boolean => blank === "waits" && !optional;

/** Leaf that was taken out is never lost from sight with its row. */
const isBeside = ({ optional, quantity }: Parameter): boolean => optional && quantity.holds === "number";

/** Whether rows that are blank in every measured list are passed over. */
const passesOver = (lists: readonly Parameter[]): boolean => lists.some((list) => isDeciding(list) && !list.gaps);

function kept(lists: readonly Parameter[]): string[] {
  if (!passesOver(lists)) return [];
  const deciding = lists.filter(isDeciding).map(({ name }) => `_TEA_GIVEN(INDEX(${name}Rows,place,1))`);
  const beside = lists.filter(isBeside).map(({ name }) => `_TEA_ABOVE0(INDEX(${name}Beside,place,1))`);
  const terms = [...deciding, ...beside].join("+");
  const held = lists.filter(isBeside).map(({ name }) => `${name}Beside,_TEA_ROWED(${name}Held,listed)`);
  return [...held, `keeps,MAKEARRAY(MAX(1,listed),1,LAMBDA(place,across,IF(${terms}>0,1,0)))`];
}

const valuesOf = ({ name }: Parameter, lists: readonly Parameter[]): string =>
  passesOver(lists) ? `FILTER(${name}Rows,keeps)` : `${name}Rows`;

const filled = ({ fallback }: Parameter, values: string): string =>
  fallback === undefined ? values : `MAP(${values},LAMBDA(held,_TEA_INSTEAD(held,${literal(fallback)})))`;

/** In the order in which a call is refused: blocks, errors in cells, lengths, then what the rows hold. */
function saying(lists: readonly Parameter[]): string {
  const blocks = lists.map(({ name }) => `(_TEA_ROWS(${name}In)>1)*(_TEA_COLUMNS(${name}In)>1)`);
  const refused = lists.map(({ name }) => `_TEA_REFUSED(${name}List)`);
  const waiting = lists.filter((list) => isDeciding(list) && !list.gaps).map(({ name }) => `_TEA_BLANKS(${name}List)`);
  const needed = lists
    .filter(
      ({ blank, optional, gaps, fallback }) => blank === "is refused" && !optional && !gaps && fallback === undefined,
    )
    .map(({ name }) => `_TEA_BLANKS(${name}List)`);
  const waits = waiting.length === 0 ? "0" : `IF(${waiting.join("+")}>0,"",0)`;
  const rows = `IF(${[...refused, ...needed].join("+")}>0,#VALUE!,${waits})`;
  const some = passesOver(lists) ? `IF(SUM(keeps)=0,"",${rows})` : rows;
  const none = lists.some(isDeciding) ? '""' : "#VALUE!";
  const lengths = `IF(${["0", ...lists.map(misfit)].join("+")}>0,#VALUE!,IF(listed=0,${none},${some}))`;
  const errors = lists.reduceRight(
    (rest, { name }) => `IF(ISERROR(SUM(${name}Held)),SUM(${name}Held),${rest})`,
    lengths,
  );
  return `IF(${blocks.join("+")}>0,#VALUE!,${errors})`;
}

function misfit({ name, gaps, optional, oneForAll }: Parameter): string {
  if (gaps) return `(${name}Full>listed)`;
  const short = `(${name}Long<listed)`;
  if (!optional) return short;
  return `(${name}Full>0)*${short}${oneForAll ? `*(${name}Long<>1)` : ""}`;
}
