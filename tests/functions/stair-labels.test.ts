import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { type Answer, givenCells, isFailed } from "../../src/functions/cells";
import type { Declaration } from "../../src/functions/declare";
import { readStair } from "../../src/functions/read-stair";
import { FACT_LABELS, FACT_NAMES, type FactName, HELD_AS_GIVEN } from "../../src/solver/code/fact-labels";
import { facts } from "../../src/solver/code/facts";
import { PROFILES } from "../../src/solver/code/profiles";
import type { StairLabelName } from "../../src/solver/layout/stair-facts";
import { STAIR_LABELS, type StairLabel, type StairReader } from "../../src/solver/stair-labels";
import { words } from "../../src/solver/words";

const labels = Object.entries<StairLabel>(STAIR_LABELS) as readonly (readonly [StairLabelName, StairLabel])[];
const takers = catalogue.filter(({ parameters }) => Object.values(parameters).some(({ kind }) => kind === "stair"));

type Further = readonly (Table | number)[];
type Table = readonly (readonly (string | number)[])[];

/** Stairs that know their sizes in different ways, so that each label counts in one of them. */
const STAIRS: readonly Table[] = [
  [
    ["total rise", 107.5],
    ["risers", 14],
    ["run", 10],
    ["width", 36],
    ["open end", "both"],
    ["headroom", 80],
    ["opening", 130],
    ["floor thickness", 11],
    ["handrail height", 35],
  ],
  [
    ["unit rise", 7.5],
    ["treads", 13],
    ["tread depth", 10],
    ["width", 36],
  ],
  [
    ["total rise", 107.5],
    ["available run", 140],
    ["open end", "right"],
  ],
  [
    ["total rise", 107.5],
    ["treads", 13],
    ["total run", 130],
    ["width", 36],
  ],
  [
    ["total rise", 107.5],
    ["risers", 14],
    ["board depth", 11.25],
    ["width", 36],
    ["overhang", 1],
    ["handrail height", 35],
    ["landing tread", 5],
  ],
];

const READINGS: Table = [["step", "run", "back", "left angle", "right angle"], [1, 10, 36, "square", "square"]];
const STOCK: Table = [["length", "width", "price"], [40, 12, 30], [38, 14, 29], [40, 9, 20]];

/** As many risers as the stairs have, in two flights. */
const TWO_FLIGHTS: Table = [["risers", "turn", "run"], [6, "half left", 10], [8, "", ""]];
const THREE_FLIGHTS: Table = [["risers", "turn", "run", "width"], [4, "half left", "", 36], [5, "half left", "", 36], [5, "", "", 36]];

/**
 * What goes in beside the stair: orders with readings and without, flights with a run and flights that take the stair's, a starting step
 * 8 in past the skirt and its riser bent by a saw.
 */
const FURTHER: Readonly<Partial<Record<string, readonly Further[]>>> = {
  FLIGHTS: [[TWO_FLIGHTS], [THREE_FLIGHTS]],
  ONEFLIGHT: [[TWO_FLIGHTS, 1], [TWO_FLIGHTS, 2], [THREE_FLIGHTS, 1]],
  BLANK: [[], [READINGS]],
  ORDER: [[STOCK], [STOCK, READINGS]],
  STARTINGSTEP: [[[[8]], [["half round"]], [["kerfs"]]]],
  // A baluster of 1 1/4, as many as the gap asks for, under a rail 2 deep.
  TREADBALUSTERS: [[[[1.25]], [[""]], [[2]]]],
};

const VALUES: Readonly<Record<StairLabel["kind"], readonly (string | number)[]>> = {
  length: [1.5, 9, 40], count: [2, 12, 15], number: [3], angle: [3], ratio: [0.1], choice: [], flag: ["no"], text: ["white oak"],
};

/** Functions whose answer has every label given again. */
const PRINTS_AGAIN: readonly string[] = ["LAYOUT", "ONEFLIGHT"];

/**
 * What a function makes of a stair; of LAYOUT without the label's own row, which it prints again. A check is what it takes from the stair.
 */
const answered = ({ id, ...declaration }: Declaration, cells: Table, further: Further, label: string): string => {
  const text = (cell: Answer): unknown => (typeof cell === "object" ? cell.says : cell);
  if (id === "CHECK" || id === "ALTERNATES") {
    const read = readStair("stair", givenCells(cells));
    if (isFailed(read)) return read.says;
    const { unit: _unit, ...found } = facts(read.given, read.unit, read.assumed) as Record<string, unknown>;
    return JSON.stringify(found);
  }
  const answer = call({ id, ...declaration }, [cells, ...further]);
  if (!Array.isArray(answer)) return JSON.stringify(text(answer));
  return JSON.stringify(answer.filter(([first]) => !PRINTS_AGAIN.includes(id) || first !== label).map((row) => row.map(text)));
};

/** A label that only has to agree with others is not read for anything. */
const isRefused = (answer: string): boolean => answer.includes("disagree");

const without = new Map<string, string>();

const reads = (declaration: Declaration, name: StairLabelName, { kind, options }: StairLabel): boolean =>
  // A label that is only for the check is no part of any way to know the sizes of a stair.
  (HELD_AS_GIVEN.some((fact) => fact === name) ? STAIRS.slice(0, 1) : STAIRS).some((stair, index) =>
    (FURTHER[declaration.id] ?? [[]]).some((further) => {
      const label = words(name);
      const key = `${declaration.id} ${index} ${JSON.stringify(further)} ${PRINTS_AGAIN.includes(declaration.id) ? label : ""}`;
      const plain = without.get(key) ?? answered(declaration, stair, further, label);
      without.set(key, plain);
      return (options ?? VALUES[kind]).some((value) => {
        const given = answered(declaration, [...stair.filter(([first]) => first !== label), [label, value]], further, label);
        return given !== plain && !isRefused(given);
      });
    }),
  );

const readersOf = (name: StairLabelName, label: StairLabel): readonly string[] =>
  takers.filter((declaration) => reads(declaration, name, label)).map(({ id }) => id);

// What a label changes is seen in the answers, whatever its record says.
test.each(labels)("%s is read by the functions its record names and by no other", (name, label) => {
  expect(readersOf(name, label)).toEqual(label.readBy);
});

test("every function that takes a stair reads some label", () => {
  const readers: readonly StairReader[] = labels.flatMap(([, { readBy }]) => readBy);
  expect([...new Set(readers)].sort()).toEqual(takers.map(({ id }) => id).sort());
});

/** Facts under these keys of a limit are what it is compared with or turns on. */
const OF_A_LIMIT = ["fact", "given", "of", "inner", "spread", "than"];

/** Every fact that the limits of a code name, with what a condition takes it for. */
const named = (part: unknown, under = ""): readonly (readonly [fact: FactName, otherwise: unknown])[] => {
  if (typeof part === "string") return OF_A_LIMIT.includes(under) && part in FACT_LABELS ? [[part as FactName, undefined]] : [];
  if (Array.isArray(part)) return part.flatMap((one) => named(one, under));
  if (typeof part !== "object" || part === null) return [];
  const { fact, otherwise } = part as { fact?: FactName; otherwise?: unknown };
  return [
    ...(fact === undefined ? [] : [[fact, otherwise] as const]),
    ...Object.entries(part).flatMap(([key, value]) => named(value, key)),
  ];
};

const inCodes = PROFILES.flatMap(({ limits }) => named(limits));

test.each(FACT_NAMES)("some code asks for %s", (fact) => {
  // Winders that are alike are spread by nothing; the check says so by itself.
  const answers: FactName = fact === "windersAlike" ? "winderSpread" : fact;
  expect(inCodes.map(([name]) => name)).toContain(answers);
});

test.each(FACT_NAMES.filter((fact) => FACT_LABELS[fact].choices !== undefined && FACT_LABELS[fact].usual !== undefined))(
  "every code takes %s for the same where nobody says so", (fact) => {
    const taken = inCodes.flatMap(([name, otherwise]) => (name === fact && otherwise !== undefined ? [otherwise] : []));
    expect(new Set(taken)).toEqual(new Set([FACT_LABELS[fact].usual]));
  },
);

test("a label that is only for the check takes TRUE for yes", () => {
  const read = readStair("stair", [["total rise", 107.5], ["guard is handrail", true]]);
  expect(isFailed(read) ? read.says : read.given.guardIsHandrail).toBe("yes");
});
