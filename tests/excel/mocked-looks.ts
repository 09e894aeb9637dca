/** What was set of an object of the platform and of what it holds, by the platform's own names. */
export type Set = Record<string, unknown>;

/** Sets nothing at once: "executing instructions queued on the request context", ClientRequestContext.sync. */
export type Queue = (instruction: () => void) => void;

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

/** What a range of a sheet takes: its format, conditional formats and list of choices, whether it is merged or hidden. */
export const rangeLooks = (looks: MockedLooks, cells: string, queue: Queue): Readonly<Record<string, unknown>> => {
  const edges: Set = {};
  const format: Set = {};
  const found = { cells, format };
  const known = (): void => void (looks.looks.includes(found) || looks.looks.push(found));
  const list = { cells, set: {} };
  const column = /^[A-Z]*/.exec(cells)?.[0] ?? "";
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
        if (name === "load") return () => queue(() => void (isLoaded = true));
        if (name !== "columnWidth") return Reflect.get(target, name, own) as unknown;
        if (!isLoaded) throw new Error("the width was not loaded");
        return looks.widths[column] ?? STANDARD_WIDTH;
      },
      set: (target, name, value) => {
        // "Specifies the width of all columns within the range", "the height of all rows in the range": RangeFormat.
        if (name === "columnWidth") queue(() => void (looks.widths[column] = value));
        else if (name === "rowHeight") queue(() => void (looks.heights[cells.split(":")[0] ?? ""] = value));
        else return Reflect.set(target, name, value);
        return true;
      },
    }),
    conditionalFormats: {
      // "Adds a new conditional format to the collection at the first/top priority": ConditionalFormatCollection.add.
      add: (type: string) => {
        const rule: MockedRule = { cells, type, set: {} };
        queue(() => void looks.rules.unshift(rule));
        return recorder(rule.set, queue);
      },
    },
    dataValidation: recorder(list.set, (instruction) => queue(() => {
      instruction();
      if (!looks.lists.includes(list)) looks.lists.push(list);
    })),
    merge: (across = false) => queue(() => void (across ? undefined : looks.merged.push(cells))),
  };
};
