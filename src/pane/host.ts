import type { CutPiece } from "../drawing/cards/pieces";
import type { CellPlace } from "../sheets/cell-address";
import type { FileForm, ReadyWorkbook } from "../sheets/ready-workbooks";
import type { PlainValue, SheetData } from "../sheets/sheet-data";
import type { Solve } from "./answer";

/** A cell by its sheet and its place there, row and column counted from 0. */
export interface Place extends CellPlace {
  readonly sheet: string;
}

/** A rectangle of cells by its first one. */
export interface Block extends Place {
  readonly rows: number;
  readonly columns: number;
}

/** An error as a cell shows it: #VALUE!, #NAME? and the like. */
export interface ShownError {
  readonly error: string;
  /** The function's own sentence, where the host keeps it with the cell. */
  readonly says?: string;
}

/** A cell as it stands: null for an empty one. */
export interface HeldCell {
  /** As it is typed, from its = on. */
  readonly formula: string | undefined;
  readonly value: PlainValue | ShownError | null;
  /** Number format as spreadsheets write it. */
  readonly format: string;
}

export type HeldCells = readonly (readonly HeldCell[])[];

/**
 * What is put into a cell; a part that is missing stays as it is, and a value of null empties the cell. A text value stays text whatever it
 * looks like.
 */
export interface PutCell {
  readonly formula?: string;
  readonly value?: PlainValue | null;
  readonly format?: string;
  /** Whether a text longer than its cell goes on in further lines of it. */
  readonly wraps?: boolean;
}

/** Cells put from `at` on, row by row; undefined leaves a cell alone. */
export interface PutBlock {
  readonly at: Place;
  readonly cells: readonly (readonly (PutCell | undefined)[])[];
  /** Widths of the columns from `at` on, in pixels; undefined leaves one as it is. */
  readonly widths?: readonly (number | undefined)[];
  /** Heights of the rows from `at` on, alike. */
  readonly heights?: readonly (number | undefined)[];
}

/** What came of inserting a block: how it is taken back, and why its lengths are not shown on a tape where they are not. */
export interface InsertedBlock {
  /** Puts what was there before in its place and takes back how lengths are shown, as one step of the host's own undo. */
  readonly takeBack: (before: PutBlock) => Promise<void>;
  readonly refused?: string;
}

/** The cells of the workbook. Every call is refused with an Error whose message is a plain sentence. */
export interface CellHost {
  readonly selected: () => Promise<Place | undefined>;
  /** Calls after another cell is selected, and after the one selected has another value. */
  readonly onSelection: (tell: () => void) => Promise<void>;
  readonly read: (blocks: readonly Block[]) => Promise<readonly HeldCells[]>;
  readonly write: (blocks: readonly PutBlock[]) => Promise<void>;
  /** How wide the columns of a block are, in pixels. */
  readonly widths: (block: Block) => Promise<readonly number[]>;
  /** How high the rows of a block are, in pixels. */
  readonly heights: (block: Block) => Promise<readonly number[]>;
  /** Whether the text of each cell goes on in further lines of it. */
  readonly wraps: (places: readonly Place[]) => Promise<readonly boolean[]>;
  /**
   * Writes a block as one step of the host's own undo, with lengths shown by the coarsest mark they lie on. Left out where the number
   * format alone reduces them, and writing will do.
   */
  readonly insert?: (block: PutBlock) => Promise<InsertedBlock>;
  /** The block that each cell spilled or is spilled into, its anchor first; undefined for a cell that stands for itself. */
  readonly spills: (places: readonly Place[]) => Promise<readonly (Block | undefined)[]>;
  /** Whether a cell of the block belongs to something spilled. */
  readonly touchesSpill: (block: Block) => Promise<boolean>;
}

/** A cell of the workbook. */
interface CellAt {
  readonly sheet: string;
  readonly address: string;
}

/** A cell that a sheet waits for, and what is to be typed there. */
export interface AskedCell {
  readonly at: CellAt;
  readonly says: string;
}

/** What to do next in the workbook, and the cell where; or the cells that its sheets wait for. */
export interface ToDo {
  readonly says: string;
  readonly at?: CellAt;
  readonly asks?: readonly AskedCell[];
}

/** An answer in the first rows of a sheet, as it shows. */
export interface ShownAnswer {
  readonly name: string;
  readonly answer: string;
  readonly unit: string;
}

/** The sheets of the workbook. */
export interface SheetsHost {
  readonly names: () => Promise<readonly string[]>;
  /** Shows a sheet, and stands on one of its cells where one is named. */
  readonly show: (name: string, address?: string) => Promise<void>;
  /** What to do next, where the host can tell. */
  readonly toDo?: () => Promise<ToDo>;
  /** The answers of the sheet shown, where the host can tell: a small screen has no room for all of them beside one another. */
  readonly answers?: () => Promise<readonly ShownAnswer[]>;
  /** Calls after sheets came or went, or what stands in them changed, where the host can tell. */
  readonly onChange?: (tell: () => void) => void;
  /** Calls after another workbook took the place of the one shown, where that can happen. */
  readonly onOther?: (tell: () => void) => void;
  /**
   * Adds sheets after the last one and shows the first of them, and writes blocks that go with them into sheets that were there: all of it
   * or nothing, as one step of the host's own undo where it has one.
   */
  readonly add: (sheets: readonly SheetData[], blocks?: readonly PutBlock[]) => Promise<void>;
}

export interface SheetUse {
  readonly name: string;
  readonly isProtected: boolean;
  /** Where anything stands; undefined for an empty sheet. */
  readonly used: Block | undefined;
}

/** What mending needs beside the cells. */
export interface MendingHost {
  readonly uses: () => Promise<readonly SheetUse[]>;
  /** The blocks of a block in which formulas come to errors, where the host can tell without reading every cell. */
  readonly errors?: (block: Block) => Promise<readonly Block[]>;
  /** Works every formula of the workbook out once more. */
  readonly recalculate: () => Promise<void>;
}

/** How a person gets a ready workbook: from a folder with the files, or out of a host that works them out itself. */
export type WorkbooksHost =
  | { readonly folder: string }
  | {
      /** Shows it as a workbook of its own; answers what came of it, as does the other. */
      readonly open: (ready: ReadyWorkbook) => Promise<string>;
      readonly save: (ready: ReadyWorkbook, form: FileForm) => Promise<string>;
    };

/** A picture to stand in a sheet. */
export interface Picture {
  /** Another of this name on the sheet makes room for it. */
  readonly name: string;
  /** For those who do not see it. */
  readonly says: string;
  /** A PNG in Base64. */
  readonly png: string;
  /** In points, as it prints. */
  readonly width: number;
  readonly height: number;
  /** The cells it stands at the right of. */
  readonly beside: Block;
  /** How far below their upper edge, in points. */
  readonly down: number;
}

/** What a host knows of cut cards and can do with them; what it cannot is left out. */
export interface CardsHost {
  /** Whose job they are of. */
  readonly job?: () => string;
  /** The pieces of the call at a cell, each with what it is cut from where the workbook says it. */
  readonly withWood?: (at: Place, pieces: readonly CutPiece[]) => readonly CutPiece[];
  /** Prints cards as SVG text, page by page. */
  readonly print?: (pages: readonly (readonly string[])[]) => void;
  /** What cannot be done with them here and what would do, in a sentence. */
  readonly lacks?: string;
}

/** What a host can do with a drawing; what it cannot is left out. */
export interface DrawingsHost {
  /** Saves SVG text as a file of that name; answers what came of it. */
  readonly save?: (name: string, svg: string) => string;
  /** Saves a page of HTML as a file of that name, where nothing is printed; answers what came of it. */
  readonly savePage?: (name: string, html: string) => string;
  /** Prints the drawing, in its own size. */
  readonly print?: (drawing: Node) => void;
  /** Places a picture in the workbook; answers what came of it. */
  readonly place?: (picture: Picture) => Promise<string>;
  readonly cards?: CardsHost;
  /** What cannot be done here and what would do, in a sentence. */
  readonly lacks?: string;
}

/** What the pane asks of the workbook beside it; where a part is missing the pane says so and leaves out what needs it. */
export interface PaneHost {
  /** Where the pane stands, in words. */
  readonly place: string;
  /** Whether the page around the pane says its name already. */
  readonly hasTitle?: boolean;
  /** Whether the page around the pane starts a job itself. */
  readonly hasStart?: boolean;
  /** Whether the host is dark; undefined where it does not say and the system does. */
  readonly isDark?: boolean;
  /** Calls a worksheet function of the bundle that the workbook uses. */
  readonly solve?: Solve;
  readonly cells?: CellHost;
  readonly sheets?: SheetsHost;
  readonly mending?: MendingHost;
  readonly workbooks?: WorkbooksHost;
  readonly drawings?: DrawingsHost;
  /** What this host cannot do and what would do, a sentence each. */
  readonly lacks: readonly string[];
}
