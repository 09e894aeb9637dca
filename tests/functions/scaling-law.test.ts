import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { type Answer, folded, isFailed } from "../../src/functions/cells";
import type { Column } from "../../src/functions/columns";
import type { Declaration, ExampleCell, Parameter, ResultKind } from "../../src/functions/declare";
import { formula } from "../../src/functions/formula";
import { stair } from "../../src/functions/tables";
import { exact } from "../../src/solver/length/exact";
import { lengthIn, measure } from "../../src/solver/length/length";
import { parseLength, statedUnit } from "../../src/solver/length/parse-length";
import { isProblem } from "../../src/solver/problem";
import { words } from "../../src/solver/words";

/**
 * A law over every function, by its own examples: all lengths given from inches to millimetres scale every length in the result by 25.4,
 * and nothing else changes. By definition, 25.4 mm to the inch.
 */
const MILLIMETRES = 25.4;

type Cell = Exclude<ExampleCell, readonly unknown[]>;
type Given = Readonly<Record<string, ExampleCell | undefined>>;

/** What the law does not hold for, each with its reason: headings of the result, labels of its rows, or with neither the whole function. */
const EXCEPTIONS: readonly {
  readonly id: string;
  readonly because: string;
  readonly headings?: readonly string[];
  readonly labels?: readonly string[];
}[] = [
  { id: "TOINCHES", because: "answers inches whatever the unit; its scaling is tested beside it" },
  { id: "TOMM", because: "answers millimetres whatever the unit; its scaling is tested beside it" },
  { id: "TAPE", because: "writes inches as a tape shows them, whatever it is given" },
  {
    id: "TAKEOFF",
    because:
      "counts in ft and sq ft, or in m and sq m, by spacings and goods of its own in either: screws of 2 in or 50 mm, sheets of " +
      "4 x 8 ft or 1220 x 2440 mm",
  },
  {
    id: "GLUEUP",
    because:
      "plans on marks of 1/64 in or 0.1 mm, its terms are lengths beside counts, and defects stand in a text; its scaling is tested " +
      "beside it, in half inches",
  },
  { id: "STORYPOLE", headings: ["mark", "riseBetweenMarks", "note"], because: "marks lie on the divisions of the tape, 1/16 in or 1 mm" },
  ...["MARKS", "RISERMARKS"].map((id) => ({
    id,
    headings: ["hookOn", "tape", "offset", "note"],
    because: "what a tape and a rule show: 1/32 in or half a millimetre, an inch or 100 mm burnt; the exact distance stands beside",
  })),
  { id: "MISREAD", headings: ["likely"], because: "what is likely lies on the divisions of the tape, 1/16 in or 1 mm" },
  { id: "MISREAD", headings: ["why"], because: "hands miss by a whole inch, or by a whole centimetre" },
  { id: "NEXTSTEP", headings: ["giveOrTake"], because: "how finely a tape reads counts in it, 1/16 in or 1 mm" },
  { id: "EQUALIZE", headings: ["packing", "rise", "note"], because: "packing comes in divisions of the tape, 1/16 in or 1 mm" },
  {
    id: "CHECK",
    headings: ["note"],
    because: "a code's printed unit: a row whose limit the code prints in inches alone says so in a stair in mm",
  },
];

/**
 * Plans are made on a grid of 1/64 in or 0.1 mm, to which other lengths are rounded, so the law holds for jobs on both: half inches, 12.7
 * mm.
 * Their examples come with a kerf of half an inch, and those with a finer length are left out.
 */
const ON_A_GRID: readonly string[] = ["CUTS", "SHEETCUTS", "BUY", "PLAN", "OFFCUTS", "TALLYCUTS", "ALTERNATES"];
const BOTH_GRIDS = 0.5;

/** Columns whose numbers are a length in one row and a count, money or board feet in the next; which of the two, only the row knows. */
const EITHER: Readonly<Record<string, readonly string[]>> = {
  LIMIT: [""],
  CHECK: ["given", "limit", "margin"],
  CUTS: ["stock"],
  SHEETCUTS: ["stock"],
  BUY: ["item", "net", "gross"],
  ORDER: ["net", "gross"],
};

/** Rows of a value column without a unit column that are no lengths. */
const PLAIN_VALUES: readonly string[] = [
  "cost", "sticks", "sheets", "boards", "yield", "lowest possible cost", "most still to save", "offcuts kept", "board feet",
  "from a better grade", "boards left",
];

/** A size no stair has is taken for a number of the other unit: such a sentence is about the unit itself. */
const ABOUT_THE_UNIT = /if this is millimetres/;

const millimetres = (cell: Cell, asText: boolean): Cell => {
  if (cell === null || typeof cell === "boolean" || cell === 0) return cell;
  const read = typeof cell === "number" ? exact(cell) : parseLength(cell, "in");
  if (isProblem(read) || read.isZero() || (typeof cell === "string" && statedUnit(cell) === "mm")) return cell;
  const scaled = typeof cell === "number" ? read.times(MILLIMETRES) : lengthIn(read, "mm");
  return asText ? `${scaled.toString()} mm` : scaled.toNumber();
};

const isLength = (of: Parameter | Column | undefined): boolean => of?.kind === "length" || of?.kind === "reading" || of?.kind === "lengths";

const rowsOf = (cells: ExampleCell): readonly (readonly Cell[])[] =>
  Array.isArray(cells) ? (cells as readonly (readonly Cell[])[]) : [[cells as Cell]];

const columnNamed = (columns: Readonly<Record<string, Column>>, name: unknown): Column | undefined =>
  Object.entries(columns).find(([key]) => typeof name === "string" && folded(words(key)) === folded(name))?.[1];

/** One argument in millimetres. */
const converted = (parameter: Parameter, cells: ExampleCell, asText: boolean): ExampleCell => {
  // a size: 24 x 3
  if (isLength(parameter) && typeof cells === "string" && cells.includes(" x "))
    return cells.split(" x ").map((each) => String(millimetres(Number(each), false))).join(" x ");
  if (isLength(parameter))
    return Array.isArray(cells)
      ? rowsOf(cells).map((row) => row.map((cell) => millimetres(cell, asText)))
      : millimetres(cells as Cell, asText);
  if (parameter.kind === "table") {
    const { columns } = parameter.table;
    const [first = []] = rowsOf(cells);
    const headed = first.some((cell) => columnNamed(columns, cell) !== undefined);
    const kinds = headed ? first.map((cell) => columnNamed(columns, cell)) : Object.values(columns);
    return rowsOf(cells).map((row, index) =>
      headed && index === 0 ? row : row.map((cell, place) => (isLength(kinds[place]) ? millimetres(cell, false) : cell)),
    );
  }
  if (parameter.kind === "stair") {
    return [
      ["unit", "mm"],
      ...rowsOf(cells).map(([label = null, value = null]) => [
        label,
        isLength(columnNamed(stair.columns, label)) ? millimetres(value, false) : value,
      ]),
    ];
  }
  return cells;
};

const hasUnit = ({ parameters }: Declaration): boolean => Object.values(parameters).some(({ kind }) => kind === "unit" || kind === "stair");

const inMillimetres = (declaration: Declaration, given: Given): Given => {
  const scaled = Object.entries(given).map(
    ([name, cells]) =>
      [name, cells === undefined ? undefined : converted(declaration.parameters[name]!, cells, !hasUnit(declaration))] as const,
  );
  const unit = Object.entries(declaration.parameters).flatMap(([name, { kind }]) => (kind === "unit" ? [[name, "mm"] as const] : []));
  return Object.fromEntries([...scaled, ...unit]);
};

const isMetric = (declaration: Declaration, given: Given): boolean =>
  Object.entries(given).some(([name, cells]) =>
    rowsOf(cells ?? null).some((row) =>
      row.some(
        (cell) =>
          typeof cell === "string" &&
          (cell === "mm" || (statedUnit(cell) === "mm" && !hasUnit(declaration) && isLength(declaration.parameters[name]))),
      ),
    ),
  );

/** Whether a length of a cutting job falls between half inches. */
const isOffTheGrid = ({ parameters }: Declaration, given: Given): boolean =>
  Object.entries(given).some(([name, cells]) => {
    const parameter = parameters[name];
    if (parameter?.kind !== "table") return false;
    const [first = []] = rowsOf(cells ?? null);
    const places = [Math.max(0, first.findIndex((cell) => cell === "length")), first.findIndex((cell) => cell === "width")];
    return rowsOf(cells ?? null).some((row) =>
      places.some((place) => {
        const length = typeof row[place] === "string" ? parseLength(row[place], "in") : exact(Number(row[place] ?? 0) * MILLIMETRES);
        return !isProblem(length) && !lengthIn(length, "in").mod(BOTH_GRIDS).isZero();
      }),
    );
  });

const answerOf = (declaration: Declaration, given: Given): Answer[][] => {
  const answer = call(declaration, Object.keys(declaration.parameters).map((name) => given[name]));
  return Array.isArray(answer) ? answer : [[answer]];
};

const LENGTHS = /-?(?:(?:\d+' )?(?:\d+ )?\d+(?:\/\d+)?"|(?:\d+ )?\d+\/\d+ in\b|\d+(?:\.\d+)? (?:in|mm)\b)/g;
/** What was typed, said again: a number, or the text of a length. */
const TYPED_AGAIN = /got (?:"[^"]*mm"|-?[\d.]+)$/;

/** A text with its lengths taken out, and those lengths in millimetres. */
const apart = (text: string): { readonly rest: string; readonly lengths: readonly number[] } => ({
  rest: text.replace(LENGTHS, "#").replace(/\bin\b|\bmm\b/g, "unit"),
  lengths: (text.match(LENGTHS) ?? []).map((found) => {
    const length = parseLength(found, "in");
    return isProblem(length) ? Number.NaN : measure(length, "mm");
  }),
});

/** Sentences print four decimals of an inch. */
const PRINTED = 0.0001 * MILLIMETRES;

const expectSameText = (here: string, there: string): void => {
  if (here.replace(TYPED_AGAIN, "got") === there.replace(TYPED_AGAIN, "got")) return;
  const [a, b] = [apart(here), apart(there)];
  expect(b.rest).toBe(a.rest);
  expect(b.lengths).toHaveLength(a.lengths.length);
  b.lengths.forEach((length, index) => expect(Math.abs(length - a.lengths[index]!)).toBeLessThanOrEqual(PRINTED));
};

const TOLERANCE = 1e-9;
const near = (value: number, wanted: number): boolean => Math.abs(value - wanted) <= TOLERANCE * Math.max(1, Math.abs(wanted));

/** Numbers, alone or in a text such as 34 to 38, each the same or scaled. */
const expectEither = (inches: Answer, mm: Answer): void => {
  const numbers = (cell: Answer): readonly number[] => (String(cell).match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
  const wordsOf = (cell: Answer): string => String(cell).replace(/-?\d+(?:\.\d+)?/g, "#");
  expect(wordsOf(mm)).toBe(wordsOf(inches));
  expect(
    numbers(mm).map((value, index) => near(value, numbers(inches)[index]!) || near(value, numbers(inches)[index]! * MILLIMETRES)),
  ).not.toContain(false);
};

const says = (cell: Answer): string => (isFailed(cell) ? `${cell.failed} ${cell.says}` : String(cell));

const expectScaled = (inches: Answer, mm: Answer, kind: ResultKind): void => {
  if (kind === "unit" && inches !== "unit") return expect([inches, mm]).toEqual(["in", "mm"]);
  if (typeof inches !== "number" || typeof mm !== "number") return expectSameText(says(inches), says(mm));
  const wanted = kind === "length" || kind === "reading" ? inches * MILLIMETRES : inches;
  if (!near(mm, wanted)) throw new Error(`${mm} is not ${wanted}`);
};

const kindsOf = ({ result }: Declaration): readonly (readonly [string, ResultKind])[] => {
  if (result.kind === "table" || result.kind === "row") return Object.entries(result.columns).map(([key, { kind }]) => [key, kind]);
  const ofOne = result.kind === "lengths" ? "length" : result.kind === "amounts" ? "money" : result.kind;
  return [["", ofOne === "cell" ? "number" : ofOne]];
};

describe("inches to millimetres scale every length by 25.4 and nothing else", () => {
  for (const declaration of catalogue) {
    const takesLengths = Object.values(declaration.parameters).some(
      (parameter) => isLength(parameter) || ["unit", "stair"].includes(parameter.kind),
    );
    const exceptions = EXCEPTIONS.filter(({ id }) => id === declaration.id);
    if (!takesLengths || exceptions.some(({ headings, labels }) => headings === undefined && labels === undefined)) continue;
    const isExempt = (row: readonly Answer[], key: string): boolean =>
      exceptions.some(({ headings, labels }) => headings?.includes(key) === true || labels?.includes(String(row[0])) === true);
    const either = EITHER[declaration.id] ?? [];
    const kinds = kindsOf(declaration);
    const unitPlace = kinds.findIndex(([key]) => key === "unit");
    for (const example of declaration.examples) {
      const given =
        ON_A_GRID.includes(declaration.id) && example.given["kerf"] !== -1 ? { ...example.given, kerf: BOTH_GRIDS } : example.given;
      // glued up as GLUEUP does, whose exception holds; the same money in both units is tested beside it
      if (declaration.id === "ORDER" && "tally" in given) continue;
      if (isMetric(declaration, given) || (ON_A_GRID.includes(declaration.id) && isOffTheGrid(declaration, given))) continue;
      const scaled = inMillimetres(declaration, given);
      test(`${formula(declaration, given)}  ${formula(declaration, scaled)}`, () => {
        const [here, there] = [given, scaled].map((cells) => answerOf(declaration, cells).filter((row) => !isExempt(row, ""))) as [
          Answer[][],
          Answer[][],
        ];
        if (ABOUT_THE_UNIT.test(says(here[0]![0]!))) return;
        expect(there).toHaveLength(here.length);
        for (const [index, row] of here.entries()) {
          const beside = there[index]!;
          if (here.length === 1 && row.length === 1) {
            if (either.includes("")) expectEither(row[0]!, beside[0]!);
            else expectScaled(row[0]!, beside[0]!, kinds[0]![1]);
            continue;
          }
          for (const [place, cell] of row.entries()) {
            const [key, kind] = kinds[Math.min(place, kinds.length - 1)]!;
            if (isExempt(row, key)) continue;
            const measured = unitPlace < 0 ? !PLAIN_VALUES.includes(String(row[0])) : row[unitPlace] === "in";
            try {
              if (either.includes(key)) expectEither(cell, beside[place]!);
              else expectScaled(cell, beside[place]!, kind === "value" ? (measured ? "length" : "number") : kind);
            } catch (error) {
              throw new Error(`row ${index + 1} (${String(row[0])}), ${key}: ${error instanceof Error ? error.message : ""}`);
            }
          }
        }
      });
    }
  }
});

describe("metric text beside a bare number is refused by name, whichever of the two it is", () => {
  const hasLengths = (declaration: Declaration): boolean => Object.values(declaration.parameters).filter(isLength).length > 1;
  for (const declaration of catalogue.filter((each) => !hasUnit(each) && hasLengths(each))) {
    const { given } = declaration.examples.find((example) => !("fails" in example))!;
    const names = Object.keys(given).filter(
      (name) =>
        isLength(declaration.parameters[name]) &&
        rowsOf(given[name] ?? null)
          .flat()
          .some((cell) => cell !== 0),
    );
    for (const metric of names.length > 1 ? names : []) {
      const mixed: Given = Object.fromEntries(
        names.map((name) => [name, name === metric ? converted(declaration.parameters[name]!, given[name]!, true) : given[name]]),
      );
      test(formula(declaration, { ...given, ...mixed }), () => {
        const sentence = says(answerOf(declaration, { ...given, ...mixed })[0]![0]!);
        expect(sentence).toMatch(/^#VALUE! \w+(?:, row \d+)?: .* (?:has no unit and counts as|is in) inches, but .* is metric, /);
        for (const name of [metric, ...names.filter((other) => other !== metric).slice(0, 1)]) expect(sentence).toContain(name);
      });
    }
  }

  test("0 and what is left out go with either, inch text goes with numbers, and TAPE reads each cell by itself", () => {
    const answered = (id: string, ...cells: ExampleCell[]) => call(catalogue.find((each) => each.id === id)!, cells);
    // By hand: 19 + 6 + 0 = 25 mm wide, 6 mm high; 3/4 + 1/4 in = 1 in.
    expect(answered("NOTCH", "19 mm", "6 mm", "6 mm", 0)).toEqual([[25, 6]]);
    expect(answered("NOTCH", "19 mm", "6 mm", "0.6 cm")).toEqual([[25, 6]]);
    expect(answered("NOTCH", '3/4"', 0.25, "1/4")).toEqual([[1, 0.25]]);
    expect(answered("TAPE", [["25.4 mm"], [7.5]])).toEqual([['1"'], ['7 1/2"']]);
    // One cell of a column is enough, and the row is named.
    expect(answered("FINISHED", [["190 mm"], ["190 mm"], [7.5]], "25 mm")).toMatchObject({
      says:
        'roughRises, row 3: 7.5 has no unit and counts as inches, but roughRises, row 1 is metric, "190 mm"; write all lengths in ' +
        'one unit, here "7.5 mm" if it is millimetres',
    });
    expect(answered("PITCH", [[7], [8]], [["280 mm"], [10]])).toMatchObject({ failed: "#VALUE!" });
  });
});

describe("the law holds in every code", () => {
  const full: readonly (readonly [string, string | number])[] = [
    ["total rise", 107.5],
    ["risers", 14],
    ["run", 10],
    ["nosing", 1.25],
    ["width", 36],
    ["headroom", 82],
    ["opening", 130],
    ["floor thickness", 11],
    ["stringer board", 11.25],
    ["clear width", 37],
    ["handrails", "both"],
    ["handrail height", 35],
    ["handrail projection", 3.5],
    ["handrail clearance", 2],
    ["fall height", 100],
    ["guard height", 42],
    ["guard gap", 3.9],
    ["triangle gap", 5.5],
    ["landing depth", 40],
    ["landing width", 40],
    ["nosing radius", 0.5],
  ];
  const check = catalogue.find(({ id }) => id === "CHECK")!;
  const codes = (answerOf(catalogue.find(({ id }) => id === "CODES")!, {}).slice(1)).map(([code]) => String(code));
  test.each(codes)("%s", (code) => {
    const given: Given = { stair: full, code };
    const [here, there] = [answerOf(check, given), answerOf(check, inMillimetres(check, given))];
    expect(there).toHaveLength(here.length);
    here.forEach((row, index) => {
      for (const [place, [key]] of kindsOf(check).entries()) {
        if (key === "note") continue;
        try {
          if ((EITHER["CHECK"] ?? []).includes(key)) expectEither(row[place]!, there[index]![place]!);
          else expectScaled(row[place]!, there[index]![place]!, "text");
        } catch (error) {
          throw new Error(`row ${index + 1} (${String(row[0])}), ${key}: ${error instanceof Error ? error.message : ""}`);
        }
      }
    });
  });
});
