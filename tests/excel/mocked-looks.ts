import { type CellPlace, cellPlace } from "../../src/sheets/cell-address";

/** What was set of an object of the platform and of what it holds, by the platform's own names. */
export type Set = Record<string, unknown>;

/** Sets nothing at once: "executing instructions queued on the request context", ClientRequestContext.sync. */
export type Queue = (instruction: () => void) => void;

/** An instruction that changes nothing in the workbook. */
export const reading = (instruction: () => void): (() => void) => Object.assign(instruction, { reads: true });

/** An object of which everything may be set, and nothing read; `methods` are what it has besides. */
export const recorder = (into: Set, queue: Queue, methods: Readonly<Record<string, unknown>> = {}): unknown => {
  const parts: Record<string, unknown> = {};
  return new Proxy(into, {
    get: (_, name) => {
      if (typeof name !== "string" || name === "then") return undefined;
      if (Object.hasOwn(methods, name)) return methods[name];
      const part: Set = {};
      return (parts[name] ??= recorder(part, (instruction) => queue(() => {
        instruction();
        into[name] = part;
      })));
    },
    set: (_, name, value: unknown) => {
      queue(() => void (into[String(name)] = value));
      return true;
    },
  });
};

/** A conditional format of a sheet, as it was set. */
export interface MockedRule {
  readonly id: string;
  readonly cells: string;
  readonly type: string;
  readonly set: Set;
}

/** What a sheet has besides its cells. */
export interface MockedLooks {
  readonly looks: { readonly cells: string; readonly format: Set }[];
  /** The conditional formats, the first to hold first. */
  readonly rules: MockedRule[];
  readonly lists: { readonly cells: string; readonly set: Set }[];
  readonly merged: string[];
  readonly hidden: string[];
  /** In points, by column or row. */
  readonly widths: Record<string, unknown>;
  readonly heights: Record<string, unknown>;
  readonly frozen: Record<string, unknown>;
  readonly set: Set;
}

export const noLooks = (): MockedLooks => ({
  looks: [], rules: [], lists: [], merged: [], hidden: [], widths: {}, heights: {}, frozen: {}, set: {},
});

/** Of a column nobody has set, in points: 8.43 characters, 64 pixels (Change the column width and row height, Microsoft support). */
const STANDARD_WIDTH = 48;
/** Of a row nobody has set, in points: "Row height: 0 to 409 points, default 15" (Change the column width and row height). */
const STANDARD_HEIGHT = 15;

let rulesAdded = 0;

const isWithin = (cells: string, block: string): boolean => {
  const [[from, to], [first, last]] = [cells, block].map((text) => {
    const [one = "", other = one] = text.split(":");
    return [cellPlace(one), cellPlace(other)] as const;
  }) as [readonly [CellPlace, CellPlace], readonly [CellPlace, CellPlace]];
  return from.row <= last.row && first.row <= to.row && from.column <= last.column && first.column <= to.column;
};

/** The conditional formats of a range. */
const conditionalFormats = (looks: MockedLooks, cells: string, queue: Queue): unknown => {
  let isAsked = false;
  return {
    // "Adds a new conditional format to the collection at the first/top priority": ConditionalFormatCollection.add.
    add: (type: string) => {
      rulesAdded += 1;
      const rule: MockedRule = { id: `rule ${rulesAdded}`, cells, type, set: {} };
      queue(() => void looks.rules.unshift(rule));
      return recorder(rule.set, queue, { load: () => undefined, id: rule.id });
    },
    load: () => void (isAsked = true),
    // "The collection of ConditionalFormats that intersect the range": Range.conditionalFormats.
    get items() {
      if (!isAsked) throw new Error("the items were not loaded");
      return looks.rules.filter((rule) => rule.cells.split(",").some((block) => isWithin(block, cells))).map(({ id, type }) => ({
        id, type,
        // "Deletes this conditional format": ConditionalFormat.delete.
        delete: () => queue(() => void looks.rules.splice(looks.rules.findIndex((one) => one.id === id), 1)),
      }));
    },
  };
};

/** What a range of a sheet takes: its format, conditional formats and list of choices, whether it is merged or hidden. */
export const rangeLooks = (looks: MockedLooks, cells: string, queue: Queue): Readonly<Record<string, unknown>> => {
  const edges: Set = {};
  const format: Set = {};
  const found = { cells, format };
  const known = (): void => void (looks.looks.includes(found) || looks.looks.push(found));
  const list = { cells, set: {} };
  const column = /^[A-Z]*/.exec(cells)?.[0] ?? "";
  const row = /^[A-Z]*(\d*)/.exec(cells)?.[1] ?? "";
  let isLoaded = false;
  return {
    format: new Proxy(recorder(format, (instruction) => queue(() => (instruction(), known())), {
      borders: {
        // "Gets a border object using its name": RangeBorderCollection.getItem.
        getItem: (edge: string) => recorder((edges[edge] ??= {}) as Set, (instruction) => queue(() => {
          instruction();
          format["borders"] = edges;
          known();
        })),
      },
    }) as object, {
      get: (target, name, own) => {
        // "You must call context.sync() before reading the properties": RangeFormat.load.
        if (name === "load") return () => queue(reading(() => void (isLoaded = true)));
        if (!["columnWidth", "rowHeight", "wrapText"].includes(String(name))) return Reflect.get(target, name, own) as unknown;
        if (!isLoaded) throw new Error(`${String(name)} was not loaded`);
        if (name === "columnWidth") return looks.widths[column] ?? STANDARD_WIDTH;
        if (name === "rowHeight") return looks.heights[row] ?? STANDARD_HEIGHT;
        // "Specifies if Excel wraps the text in the object": RangeFormat.wrapText; the last that was set for the cell holds.
        const last = [...looks.looks].reverse().find((one) => "wrapText" in one.format && isWithin(one.cells, cells));
        return last?.format["wrapText"] ?? false;
      },
      set: (target, name, value) => {
        // "Specifies the width of all columns within the range", "the height of all rows in the range": RangeFormat.
        if (name === "columnWidth") queue(() => void (looks.widths[column] = value));
        else if (name === "rowHeight") queue(() => void (looks.heights[row] = value));
        else return Reflect.set(target, name, value);
        return true;
      },
    }),
    conditionalFormats: conditionalFormats(looks, cells, queue),
    dataValidation: recorder(list.set, (instruction) => queue(() => {
      instruction();
      if (!looks.lists.includes(list)) looks.lists.push(list);
    })),
    merge: (across = false) => queue(() => void (across ? undefined : looks.merged.push(cells))),
  };
};
