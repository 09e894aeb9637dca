import { OfficeMockObject } from "office-addin-mock";
import { cellPlace } from "../../src/sheets/cell-address";
import { blockAddress } from "../../src/sheets/cell-blocks";
import { type MockedLooks, noLooks, rangeLooks, reading } from "./mocked-looks";
import { typedInto } from "./typed-into";

/** A workbook as the mocked Excel holds it. Errors are given and answered by their text, such as #NAME?. */
export interface MockedSheet {
  readonly name: string;
  readonly isProtected?: boolean;
  readonly cells?: Readonly<Record<string, MockedCell>>;
  /** Blocks that formulas spill, by the anchor: rows, columns. */
  readonly spills?: Readonly<Record<string, readonly [rows: number, columns: number]>>;
}

export interface MockedCell {
  readonly formula?: string;
  readonly value?: string | number | boolean;
  readonly format?: string;
  /** A text that stands behind an apostrophe, or in a cell of text. */
  readonly isText?: true;
}

export interface MockedWorkbook {
  readonly sheets: readonly MockedSheet[];
  readonly selected?: readonly [sheet: string, address: string];
  /** What formulas answer when they are written. */
  readonly answers?: Readonly<Record<string, string | number | boolean | readonly (readonly (string | number)[])[]>>;
  /** A code with which every call is refused. */
  readonly refuses?: string;
  /** A code with which a conditional format is refused. */
  readonly refusesRules?: string;
  /** Whether a group of steps for one Undo is refused: "the UndoNotSupported error is thrown", undo capabilities. */
  readonly refusesGroups?: boolean;
  /** Formulas that are refused when they are written, with the code. */
  readonly refusesFormula?: Readonly<Record<string, string>>;
  readonly isReadOnly?: boolean;
}

interface Held {
  formula: string | undefined;
  value: string | number | boolean;
  format: string;
}

/** A picture on a sheet. */
export interface MockedShape {
  name: string;
  readonly png: string;
  altTextDescription: string;
  left: number;
  top: number;
  width: number;
  height: number;
  lockAspectRatio: boolean;
  placement: string;
}

interface Sheet {
  name: string;
  readonly shapes: MockedShape[];
  readonly isProtected: boolean;
  readonly cells: Map<string, Held>;
  readonly spills: Map<string, readonly [number, number]>;
  readonly looks: MockedLooks;
}

type Mock = OfficeMockObject & Record<string, unknown>;

const ERROR = /^#[A-Z/0-9]+[!?]$|^#N\/A$/;
const key = (row: number, column: number): string => `${row} ${column}`;
const COLUMN_POINTS = 48;
const ROW_POINTS = 15;
const EMPTY: Held = { formula: undefined, value: "", format: "General" };

const each = (cells: unknown, work: (cell: unknown, down: number, right: number) => void): void => {
  for (const [down, line] of (cells as unknown[][]).entries()) for (const [right, cell] of line.entries()) work(cell, down, right);
};

/** Refused as the platform refuses: an error with a code. */
const refused = (code: string): Error => Object.assign(new Error(code), { code });

/** What the mocked Excel came to, to look at. */
export interface MockedExcel {
  readonly sheetNames: () => readonly string[];
  readonly cell: (sheet: string, address: string) => Held;
  /** What was set of a sheet besides its cells. */
  readonly sheet: (name: string) => MockedLooks;
  /** The pictures of a sheet. */
  readonly shapes: (sheet: string) => readonly MockedShape[];
  readonly select: (sheet: string, address: string) => void;
  /** How many handlers of events there are. */
  readonly handlers: () => number;
  /** What was written, a batch that went to Excel at once an entry: addresses of the cells whose content was set. */
  readonly batches: readonly (readonly string[])[];
  readonly calculations: readonly string[];
  readonly activated: readonly string[];
  /** The blocks that were asked for errors. */
  readonly looks: readonly string[];
  /** How often Undo is to be chosen to take back all that was done. */
  readonly undoSteps: () => number;
  readonly restore: () => void;
}

/**
 * Excel as far as our host calls it, on office-addin-mock, which lets nothing be read that was not loaded and synchronised. What it answers
 * is what the platform's documentation says; the line stands beside each answer.
 */
export const mockedExcel = ({
  sheets: given,
  selected = ["", "A1"],
  answers = {},
  refuses,
  refusesFormula = {},
  refusesGroups = false,
  refusesRules,
  isReadOnly = false,
}: MockedWorkbook): MockedExcel => {
  const sheets: Sheet[] = given.map(({ name, isProtected = false, cells = {}, spills = {} }) => ({
    name,
    shapes: [],
    isProtected,
    looks: noLooks(),
    cells: new Map(
      Object.entries(cells).map(([address, { formula, value = 0, format = "General" }]) => {
        const { row, column } = cellPlace(address);
        return [key(row, column), { formula, value, format }];
      }),
    ),
    spills: new Map(
      Object.entries(spills).map(([address, size]) => {
        const { row, column } = cellPlace(address);
        return [key(row, column), size];
      }),
    ),
  }));
  let current = selected;
  const batches: string[][] = [];
  const calculations: string[] = [];
  const activated: string[] = [];
  const looks: string[] = [];
  let undoSteps = 0;
  /** Sheets that came or went and did not go to Excel yet. */
  let changes = 0;
  const selectionTold: (() => Promise<void>)[] = [];

  /** One context: what is asked of it goes to Excel together, at sync. */
  const newContext = (isGroup: boolean): Mock => {
    let syncs = 0;
    const handed: {
      readonly mock: Mock;
      readonly sync: () => void;
      readonly fresh: () => Readonly<Record<string, unknown>>;
      readonly loaded: Set<string>;
    }[] = [];
    /** What was set, in the order it was set: "executing instructions queued on the request context", ClientRequestContext.sync. */
    const queue: (() => void)[] = [];
    let failure: Error | undefined;
    let batch: string[] = [];

    /**
     * An object whose properties can be read after load and sync: "Properties of proxy objects must be loaded and synchronised",
     * application-specific API model.
     */
    const object = (
      fresh: () => Readonly<Record<string, unknown>>,
      members: Readonly<Record<string, unknown>> = {},
      sync: (mock: Mock) => void = () => undefined,
      set: Readonly<Record<string, (value: unknown) => void>> = {},
      /** What is only set and never read. */
      onlySet: Readonly<Record<string, unknown>> = {},
    ): Mock => {
      // The mock takes null for an object; what is really there comes with sync.
      const first = Object.fromEntries(Object.entries(fresh()).map(([name, value]) => [name, value ?? false]));
      const mock = new OfficeMockObject({ ...first, ...members } as never, "excel" as never) as Mock;
      const loaded = new Set<string>();
      mock.load = ((names: string) => {
        for (const name of names.split(",")) loaded.add(name);
        OfficeMockObject.prototype.load.call(mock, names);
        return mock;
      }) as never;
      handed.push({ mock, fresh, loaded, sync: () => sync(mock) });
      return new Proxy(mock, {
        get: (target, name, own) =>
          typeof name === "string" && Object.hasOwn(onlySet, name) ? onlySet[name] : (Reflect.get(target, name, own) as unknown),
        set: (target, name, value: unknown) => {
          const instruction = set[String(name)];
          if (instruction !== undefined) queue.push(() => instruction(value));
          (target as unknown as Record<string, unknown>)[String(name)] = value;
          return true;
        },
      });
    };

    const fail = (code: string): void => {
      failure ??= refused(code);
    };

    const spillAt = (
      sheet: Sheet,
      row: number,
      column: number,
    ): { row: number; column: number; rows: number; columns: number } | undefined => {
      for (const [anchor, [rows, columns]] of sheet.spills) {
        const [top = 0, left = 0] = anchor.split(" ").map(Number);
        if (row >= top && row < top + rows && column >= left && column < left + columns) return { row: top, column: left, rows, columns };
      }
      return undefined;
    };

    const write = (sheet: Sheet, row: number, column: number, entered: unknown): void => {
      // "specify null for all other cells": excel-add-ins-blank-null-values.md, null input in 2-D array.
      if (entered === null) return;
      // "AccessDenied: You cannot perform the requested operation": application-specific-api-error-handling.md; a protected sheet cannot be
      // written, excel.md e, Repair: needs unprotected sheets.
      if (sheet.isProtected) return fail("AccessDenied");
      const refusedWith = refusesFormula[String(entered)];
      if (refusedWith !== undefined) return fail(refusedWith);
      const held = { ...(sheet.cells.get(key(row, column)) ?? EMPTY) };
      sheet.spills.delete(key(row, column));
      batch.push(`${sheet.name}!${row},${column}`);
      if (typeof entered === "string" && entered.startsWith("=") && held.format !== "@") {
        const answer = answers[entered] ?? 0;
        held.formula = entered;
        held.value = Array.isArray(answer) ? (answer[0]?.[0] as string | number) : (answer as string | number | boolean);
        // "fill these multiple cells": excel-add-ins-ranges-dynamic-arrays.md, a formula set by formulas spills.
        if (Array.isArray(answer)) {
          sheet.spills.set(key(row, column), [answer.length, answer[0]?.length ?? 0]);
          for (const [down, cells] of (answer as readonly (readonly (string | number)[])[]).entries()) {
            for (const [right, value] of cells.entries()) {
              if (down + right > 0)
                sheet.cells.set(key(row + down, column + right), {
                  ...(sheet.cells.get(key(row + down, column + right)) ?? EMPTY),
                  formula: undefined,
                  value,
                });
            }
          }
        }
      } else {
        held.formula = undefined;
        Object.assign(held, typedInto(held.format, entered as string | number | boolean));
      }
      sheet.cells.set(key(row, column), held);
    };

    const range = (sheet: Sheet | undefined, row: number, column: number, rows: number, columns: number): Mock => {
      const matrix = (part: (cell: Held) => unknown): unknown[][] =>
        Array.from({ length: rows }, (_, down) =>
          Array.from({ length: columns }, (__, right) => part(sheet?.cells.get(key(row + down, column + right)) ?? EMPTY)),
        );
      const fresh = () => {
        const all = Array.from({ length: rows }, (_, down) =>
          Array.from({ length: columns }, (__, right) => sheet !== undefined && spillAt(sheet, row + down, column + right) !== undefined),
        ).flat();
        return {
          rowIndex: row,
          columnIndex: column,
          rowCount: rows,
          columnCount: columns,
          // "the distance in points, for 100% zoom, from the left edge of the worksheet to the left edge of the range": Range.left, and
          // Range.top alike; columns of 48 points and rows of 15.
          left: column * COLUMN_POINTS,
          top: row * ROW_POINTS,
          isNullObject: false,
          // "If a cell has no formula, its value is returned instead": Range.formulas.
          formulas: matrix(({ formula, value }) => formula ?? value),
          // "Cells that contain an error will return the error string": Range.values.
          values: matrix(({ value }) => value),
          // Excel.RangeValueType.
          valueTypes: matrix(({ value }) =>
            typeof value === "number"
              ? "Double"
              : typeof value === "boolean"
                ? "Boolean"
                : value === ""
                  ? "Empty"
                  : ERROR.test(value)
                    ? "Error"
                    : "String",
          ),
          numberFormat: matrix(({ format }) => format),
          // "true if all cells have a spill border, false if none, null if there are both": Range.hasSpill.
          hasSpill: all.every(Boolean) ? true : all.some(Boolean) ? null : false,
        };
      };
      const asBlock = blockAddress({ row, column, rows, columns });
      const anchor = sheet === undefined || rows * columns !== 1 ? undefined : spillAt(sheet, row, column);
      const isAnchor = anchor?.row === row && anchor.column === column;
      const made = object(
        fresh,
        {
          // "If it's not a spilled cell, this method returns an object with its isNullObject property set to true".
          getSpillParentOrNullObject: () =>
            sheet === undefined || anchor === undefined || isAnchor ? nothing() : range(sheet, anchor.row, anchor.column, 1, 1),
          // "when called on an anchor cell; if the range isn't an anchor cell, isNullObject is true".
          getSpillingToRangeOrNullObject: () =>
            sheet === undefined || anchor === undefined || !isAnchor ? nothing() : range(sheet, row, column, anchor.rows, anchor.columns),
          getSpecialCellsOrNullObject: (type: string, values: string) => {
            if (type !== "Formulas" || values !== "Errors") throw new Error(`${type} of ${values} are not mocked.`);
            return errorAreas(sheet, row, column, rows, columns);
          },
        },
        undefined,
        sheet === undefined
          ? {}
          : {
              numberFormat: (formats) =>
                each(formats, (format, down, right) => {
                  if (format === null) return;
                  if (sheet.isProtected) return fail("AccessDenied");
                  const at = key(row + down, column + right);
                  sheet.cells.set(at, { ...(sheet.cells.get(at) ?? EMPTY), format: String(format) });
                }),
              formulas: (entries) => each(entries, (entered, down, right) => write(sheet, row + down, column + right, entered)),
            },
        sheet === undefined ? {} : { ...rangeLooks(sheet.looks, asBlock, (set) => queue.push(set)), asBlock },
      );
      return made;
    };

    /**
     * "represents all the cells that match the specified type and value. If no special cells are found, then this method returns an object
     * with its isNullObject property set to true": Range.getSpecialCellsOrNullObject. A block for each error.
     */
    const errorAreas = (sheet: Sheet | undefined, row: number, column: number, rows: number, columns: number): Mock => {
      const places = [...(sheet?.cells ?? new Map<string, Held>())].flatMap(([at, { formula, value }]) => {
        const [down = 0, right = 0] = at.split(" ").map(Number);
        const isInside = down >= row && down < row + rows && right >= column && right < column + columns;
        return isInside && formula !== undefined && typeof value === "string" && ERROR.test(value) ? [{ down, right }] : [];
      });
      looks.push(`${sheet?.name ?? ""}!${row},${column} ${rows}x${columns}`);
      const areas = object(() => ({ count: places.length }));
      areas.load = (() => {
        queue.push(reading(() => {
          areas["items"] = places.map(({ down, right }) => {
            const one = range(sheet, down, right, 1, 1);
            for (const name of ["rowIndex", "columnIndex", "rowCount", "columnCount"]) one.load(name as never);
            return one;
          });
        }));
        return areas;
      }) as never;
      const found = object(() => ({ isNullObject: places.length === 0 }));
      found["areas"] = areas;
      return found;
    };

    const nothing = (): Mock =>
      object(() => ({ isNullObject: true, rowIndex: 0, columnIndex: 0, rowCount: 0, columnCount: 0 }), {
        getSpillingToRangeOrNullObject: () => nothing(),
      });

    /** The pictures of a sheet: what is added, set and deleted goes to Excel at sync. */
    const shapesOf = (sheet: Sheet): Mock => {
      const shapeMock = (shape: MockedShape): Mock => {
        const set = (name: keyof MockedShape) => (value: unknown): void => {
          if (sheet.isProtected) return fail("AccessDenied");
          // "Throws an InvalidArgument exception when set with a negative value or zero as an input": Shape.height and width; "with a
          // negative value": Shape.left and top.
          const isSize = name === "width" || name === "height";
          if ((isSize && Number(value) <= 0) || ((name === "left" || name === "top") && Number(value) < 0)) return fail("InvalidArgument");
          Object.assign(shape, { [name]: value });
        };
        const names = ["name", "altTextDescription", "left", "top", "width", "height", "lockAspectRatio", "placement"] as const;
        return object(() => ({ ...shape }), {
          // "Removes the shape from the worksheet": Shape.delete.
          delete: () => queue.push(() => {
            if (sheet.isProtected) return fail("AccessDenied");
            sheet.shapes.splice(sheet.shapes.indexOf(shape), 1);
          }),
        }, undefined, Object.fromEntries(names.map((name) => [name, set(name)])));
      };
      const shapes = object(() => ({ count: sheet.shapes.length }), {
        // "A Base64-encoded string representing an image in either JPEG or PNG format": ShapeCollection.addImage.
        addImage: (png: string) => {
          const shape: MockedShape = {
            name: `Picture ${sheet.shapes.length + 1}`, png, altTextDescription: "", left: 0, top: 0, width: 100, height: 100,
            lockAspectRatio: false, placement: "TwoCell",
          };
          queue.push(() => {
            if (sheet.isProtected) return fail("AccessDenied");
            if (!/^(iVBORw0KGgo|\/9j\/)/.test(png)) return fail("InvalidArgument");
            sheet.shapes.push(shape);
          });
          return shapeMock(shape);
        },
      });
      // A path that starts with items loads a property of each item: application-specific API model, collection objects.
      shapes.load = ((paths: string) => {
        queue.push(() => {
          shapes["items"] = sheet.shapes.map((shape) => {
            const mock = shapeMock(shape);
            for (const path of paths.split(",")) mock.load(path.replace("items/", "") as never);
            return mock;
          });
        });
        return shapes;
      }) as never;
      return shapes;
    };

    /** "Removes the handler from the event": EventHandlerResult.remove; as everything, when it goes to Excel. */
    const handler = (told: () => Promise<void>): unknown => {
      queue.push(reading(() => void selectionTold.push(told)));
      return { context, remove: () => void queue.push(reading(() => void selectionTold.splice(selectionTold.indexOf(told), 1))) };
    };

    const sheetMocks = new Map<string, Mock>();
    const sheetMock = (name: string, sheet: Sheet | undefined): Mock => {
      const known = sheetMocks.get(name);
      if (known !== undefined) return known;
      const protection = object(() => ({ protected: sheet?.isProtected ?? false }));
      const mock = object(() => ({ name }), {
        getRangeByIndexes: (row: number, column: number, rows: number, columns: number) => range(sheet, row, column, rows, columns),
        getRange: (address: string) => {
          if (sheet === undefined) return nothing();
          const [from = "", to = from] = address.split(":");
          // "B:B", "3:3": whole columns and rows are taken for their sizes and to hide them.
          const hide = (): void => void sheet.looks.hidden.push(from);
          if (!/^[A-Z]+\d+$/.test(from)) {
            return object(() => ({ isNullObject: false }), {}, undefined, {
              rowHidden: hide, columnHidden: hide,
            }, rangeLooks(sheet.looks, address, (set) => queue.push(set)));
          }
          const [first, last] = [cellPlace(from), cellPlace(to)];
          return range(sheet, first.row, first.column, last.row - first.row + 1, last.column - first.column + 1);
        },
        // "For example, \"A1:B2, A5:B5\"": Worksheet.getRanges.
        getRanges: (addresses: string) => rangeLooks(sheet?.looks ?? noLooks(), addresses, (set) => queue.push(set)),
        getUsedRangeOrNullObject: () => {
          const held = [...(sheet?.cells ?? new Map<string, Held>())]
            .filter(([, { value, formula }]) => value !== "" || formula !== undefined)
            .map(([at]) => at.split(" ").map(Number));
          // "If the entire worksheet is blank, isNullObject is true".
          if (held.length === 0) return nothing();
          const [rows, columns] = [held.map(([row = 0]) => row), held.map(([, column = 0]) => column)];
          const [top, left] = [Math.min(...rows), Math.min(...columns)];
          return range(sheet, top, left, Math.max(...rows) - top + 1, Math.max(...columns) - left + 1);
        },
        freezePanes: {
          freezeRows: (count: number) => void (sheet !== undefined && (sheet.looks.frozen["rows"] = count)),
          freezeColumns: (count: number) => void (sheet !== undefined && (sheet.looks.frozen["columns"] = count)),
          // "The range provided corresponds to cells that will be frozen in the top- and left-most pane": WorksheetFreezePanes.freezeAt.
          freezeAt: ({ asBlock }: { readonly asBlock: string }) => void (sheet !== undefined && (sheet.looks.frozen["at"] = asBlock)),
        },
        activate: () => void activated.push(name),
        delete: () =>
          void sheets.splice(
            sheets.findIndex((one) => one.name === name),
            1,
          ),
      }, undefined, sheet === undefined ? {} : Object.fromEntries(
        ["showGridlines", "tabColor", "visibility"].map((name) => [name, (value: unknown) => void (sheet.looks.set[name] = value)]),
      ));
      mock["protection"] = protection;
      if (sheet !== undefined) mock["shapes"] = shapesOf(sheet);
      sheetMocks.set(name, mock);
      return mock;
    };

    const worksheets: Mock = object(() => ({ count: sheets.length }), {
      getItem: (name: string) => {
        const sheet = sheets.find((one) => one.name === name);
        // "ItemNotFound: The requested resource doesn't exist".
        if (sheet === undefined) fail("ItemNotFound");
        return sheetMock(name, sheet);
      },
      add: (name: string) => {
        // "name should be unique": WorksheetCollection.add; "ItemAlreadyExists: The resource being created already exists".
        if (sheets.some((one) => one.name.toLowerCase() === name.toLowerCase())) fail("ItemAlreadyExists");
        // "The worksheet will be added at the end of existing worksheets".
        const sheet: Sheet = { name, shapes: [], isProtected: false, cells: new Map(), spills: new Map(), looks: noLooks() };
        sheets.push(sheet);
        changes += 1;
        return sheetMock(name, sheet);
      },
      onCalculated: { add: (told: () => Promise<void>) => handler(told) },
    });
    // A path that starts with items loads a property of each item: application-specific API model, collection objects.
    const asked: string[] = [];
    worksheets.load = ((names: string) => {
      asked.push(...names.split(","));
      return worksheets;
    }) as never;
    const loadItems = (): void => {
      if (asked.length === 0) return;
      const items = sheets.map((sheet) => sheetMock(sheet.name, sheet));
      for (const path of asked.splice(0)) {
        const [, ...names] = path.split("/");
        for (const item of items) {
          const target = names.length === 2 ? (item[names[0] ?? ""] as Mock) : item;
          target.load(names[names.length - 1] as never);
        }
      }
      worksheets["items"] = items;
    };

    const workbook = object(() => ({ readOnly: isReadOnly }), {
      getActiveCell: () => {
        const [name, address] = current;
        const sheet = sheets.find((one) => one.name === name);
        if (sheet === undefined) fail("InvalidSelection");
        const { row, column } = cellPlace(address);
        const cell = range(sheet, row, column, 1, 1);
        cell["worksheet"] = sheetMock(name, sheet);
        return cell;
      },
      onSelectionChanged: { add: (told: () => Promise<void>) => handler(told) },
      application: { calculate: (kind: string) => void calculations.push(kind) },
    });
    workbook["worksheets"] = worksheets;

    const context = {
      workbook,
      sync: async (): Promise<void> => {
        // "InvalidOperationInCellEditMode: The operation isn't available while Excel is in Edit cell mode":
        // application-specific-api-error-handling.md.
        if (refuses !== undefined) throw refused(refuses);
        loadItems();
        // "When false, each context.sync() call creates an undo record. When true, all in a single Excel.run are merged into one":
        // Excel.RunOptions.mergeUndoGroup; what reads alone makes none (from memory).
        const isChange = queue.some((one) => !("reads" in one)) || changes > 0;
        if (isGroup && refusesGroups && isChange && syncs > 0) fail("UndoNotSupported");
        else if (isChange && (!isGroup || syncs === 0)) undoSteps += 1;
        if (isChange) syncs += 1;
        changes = 0;
        const ruled = (): number => sheets.reduce((sum, { looks: { rules } }) => sum + rules.length, 0);
        const rulesBefore = ruled();
        for (const instruction of queue.splice(0)) instruction();
        if (refusesRules !== undefined && ruled() > rulesBefore) fail(refusesRules);
        for (const { sync } of [...handed]) sync();
        if (batch.length > 0) batches.push(batch);
        batch = [];
        const broken = failure;
        failure = undefined;
        if (broken !== undefined) throw broken;
        for (const { mock, fresh, loaded } of handed) {
          for (const [name, value] of Object.entries(fresh())) {
            (mock as unknown as { readonly setValue: (name: string, value: unknown) => void }).setValue(name, value);
            if (loaded.has(name)) OfficeMockObject.prototype.load.call(mock, name as never);
          }
          await mock.sync();
        }
      },
    };
    return context as unknown as Mock;
  };

  const before = (globalThis as { Excel?: unknown }).Excel;
  Object.assign(globalThis, { Excel: {
    run: (...given: readonly unknown[]) => {
      const work = given[given.length - 1] as (context: Mock) => Promise<unknown>;
      // "using the RequestContext of a previously-created object": Excel.run with a context.
      if (given.length > 1 && "sync" in (given[0] as object)) return work(given[0] as Mock);
      return work(newContext(given.length > 1 && (given[0] as { readonly mergeUndoGroup?: boolean }).mergeUndoGroup === true));
    },
  } });

  const named = (name: string): Sheet => {
    const sheet = sheets.find((one) => one.name === name);
    if (sheet === undefined) throw new Error(`no sheet ${name}`);
    return sheet;
  };
  return {
    sheetNames: () => sheets.map(({ name }) => name),
    cell: (name, address) => {
      const { row, column } = cellPlace(address);
      return named(name).cells.get(key(row, column)) ?? EMPTY;
    },
    sheet: (name) => named(name).looks,
    shapes: (name) => named(name).shapes,
    select: (sheet, address) => {
      current = [sheet, address];
      for (const told of [...selectionTold]) void told();
    },
    handlers: () => selectionTold.length,
    batches,
    calculations,
    activated,
    looks,
    undoSteps: () => undoSteps,
    restore: () => void Object.assign(globalThis, { Excel: before }),
  };
};
