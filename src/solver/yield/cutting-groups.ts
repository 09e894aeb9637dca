import { plainMarks } from "../goods/plain-marks";
import { Exact } from "../length/exact";
import { type Length } from "../length/length";
import { type Problem, problem } from "../problem";
import { called, type CuttingJob, type Piece, type Stock } from "./cutting-job";

/** Rows of the job that are planned by themselves: no other stock can take these pieces, and this stock takes no others. */
export interface CuttingGroup {
  readonly grade: string;
  readonly pieces: readonly number[];
  /** Only rows of which there are some. */
  readonly stock: readonly number[];
  /** Pieces of one class go on the same stock; so does stock of one class take the same pieces. By row of the job. */
  readonly pieceClass: ReadonlyMap<number, number>;
  readonly stockClass: ReadonlyMap<number, number>;
  /** For each class of stock which classes of pieces it takes. */
  readonly takes: readonly (readonly boolean[])[];
}

export type ImpossibleSection =
  | "no-stock-of-grade"
  | "no-stock-available"
  | "stock-without-width"
  | "stock-without-thickness"
  | "piece-too-wide"
  | "piece-too-thick"
  | "piece-fits-no-section"
  | "too-many-sections";

/** Different widths and thicknesses of pieces, and of stock, in one grade: each of these is compared with each of those. */
const MOST_SECTIONS = 500;

/** Rows of one width and thickness. */
interface Section<Row extends Piece | Stock> {
  readonly width: Length | undefined;
  readonly thickness: Length | undefined;
  readonly first: Row;
  readonly rows: number[];
}

const sectionsOf = <Row extends Piece | Stock>(table: readonly Row[], rows: readonly number[]): Section<Row>[] => {
  const sections = new Map<string, Section<Row>>();
  for (const row of rows) {
    const first = table[row]!;
    const { width, thickness } = first;
    const key = `${width?.toString() ?? ""}/${thickness?.toString() ?? ""}`;
    const known = sections.get(key);
    if (known === undefined) sections.set(key, { width, thickness, first, rows: [row] });
    else known.rows.push(row);
  }
  return [...sections.values()];
};

/** A piece without a width, or thickness, takes its board's. */
const isAtLeast = (stock: Length | undefined, piece: Length | undefined): boolean =>
  piece === undefined || (stock !== undefined && stock.gte(piece));

interface Size {
  readonly width?: Length | undefined;
  readonly thickness?: Length | undefined;
}

/** Whether one piece lies across the stock. */
export const isWideEnough = (stock: Size, piece: Size): boolean =>
  isAtLeast(stock.width, piece.width) && isAtLeast(stock.thickness, piece.thickness);

/** Widest first, then thickest; what has none comes last. */
const widestFirst = (one: Section<Piece>, other: Section<Piece>): number => {
  const size = (length: Length | undefined): Exact => length ?? new Exact(-1);
  return size(other.width).cmp(size(one.width)) || size(other.thickness).cmp(size(one.thickness));
};

const most = (lengths: readonly (Length | undefined)[]): Length =>
  lengths.reduce<Length>((largest, each) => (each?.gt(largest) ? each : largest), new Exact(0));

/** A width or thickness that is asked for and not known of all the stock: it could be cut from what is too narrow. */
const unknownSize = (
  job: CuttingJob,
  pieces: readonly Section<Piece>[],
  stock: readonly Section<Stock>[],
  size: "width" | "thickness",
  code: "stock-without-width" | "stock-without-thickness",
): Problem<ImpossibleSection> | undefined => {
  const asking = pieces.find((section) => section[size] !== undefined);
  const unknown = stock.find((section) => section[size] === undefined);
  if (asking === undefined || unknown === undefined) return undefined;
  return problem(code, {
    stock: called(unknown.first.label, unknown.rows[0]!),
    length: unknown.first.length,
    piece: called(asking.first.label, asking.rows[0]!),
    size: asking[size]!,
  });
};

const takenByNone = (
  job: CuttingJob,
  { first, rows, width, thickness }: Section<Piece>,
  stock: readonly Section<Stock>[],
): Problem<ImpossibleSection> => {
  const piece = called(first.label, rows[0]!);
  if (width !== undefined && !stock.some((each) => isAtLeast(each.width, width))) {
    return problem("piece-too-wide", { piece, width, widest: most(stock.map((each) => each.width)) });
  }
  if (thickness !== undefined && !stock.some((each) => isAtLeast(each.thickness, thickness))) {
    return problem("piece-too-thick", { piece, thickness, thickest: most(stock.map((each) => each.thickness)) });
  }
  // only one that has both sizes can be too wide for what is thick enough
  return problem("piece-fits-no-section", { piece, width: width ?? new Exact(0), thickness: thickness ?? new Exact(0) });
};

/** Numbers equal ones alike, in the order they come. */
const classesOf = (keys: readonly string[]): number[] => {
  const known = new Map<string, number>();
  return keys.map((key) => {
    if (!known.has(key)) known.set(key, known.size);
    return known.get(key)!;
  });
};

const groupsOfGrade = (
  job: CuttingJob,
  grade: string,
  pieceRows: readonly number[],
  stockRows: readonly number[],
): CuttingGroup[] | Problem<ImpossibleSection> => {
  const pieces = sectionsOf(job.pieces, pieceRows).sort(widestFirst);
  const stock = sectionsOf(job.stock, stockRows);
  const unknown =
    unknownSize(job, pieces, stock, "width", "stock-without-width") ??
    unknownSize(job, pieces, stock, "thickness", "stock-without-thickness");
  if (unknown !== undefined) return unknown;
  const count = Math.max(pieces.length, stock.length);
  if (count > MOST_SECTIONS) return problem("too-many-sections", { count, most: MOST_SECTIONS });
  const takes = stock.map((each) => pieces.map((piece) => isWideEnough(each, piece)));
  const alone = pieces.findIndex((_, piece) => !takes.some((each) => each[piece]!));
  if (alone >= 0) return takenByNone(job, pieces[alone]!, stock);
  // what can take a piece in common is one group, and what is joined to that
  const groupOf = pieces.map((_, piece) => piece);
  for (const each of takes) {
    const joined = new Set(groupOf.filter((_, piece) => each[piece]!));
    const least = Math.min(...joined);
    for (const [piece, group] of groupOf.entries()) if (joined.has(group)) groupOf[piece] = least;
  }
  return [...new Set(groupOf)].map((group): CuttingGroup => {
    const ofPieces = pieces.flatMap((_, piece) => (groupOf[piece] === group ? [piece] : []));
    const ofStock = stock.flatMap((_, each) => (ofPieces.some((piece) => takes[each]![piece]!) ? [each] : []));
    const pieceClasses = classesOf(ofPieces.map((piece) => ofStock.map((each) => Number(takes[each]![piece]!)).join("")));
    const stockClasses = classesOf(ofStock.map((each) => ofPieces.map((piece) => Number(takes[each]![piece]!)).join("")));
    const rowsWith = (rows: readonly (readonly number[])[], classes: readonly number[]): Map<number, number> =>
      new Map(rows.flatMap((of, place) => of.map((row) => [row, classes[place]!] as const)));
    return {
      grade,
      pieces: ofPieces.flatMap((piece) => pieces[piece]!.rows).sort((a, b) => a - b),
      stock: ofStock.flatMap((each) => stock[each]!.rows).sort((a, b) => a - b),
      pieceClass: rowsWith(
        ofPieces.map((piece) => pieces[piece]!.rows),
        pieceClasses,
      ),
      stockClass: rowsWith(
        ofStock.map((each) => stock[each]!.rows),
        stockClasses,
      ),
      takes: [...new Set(stockClasses)].map((stockClass) => {
        const each = takes[ofStock[stockClasses.indexOf(stockClass)]!]!;
        return [...new Set(pieceClasses)].map((pieceClass) => each[ofPieces[pieceClasses.indexOf(pieceClass)]!]!);
      }),
    };
  });
};

/** Rows by grade, in the order given. */
const byGrade = (table: readonly { readonly grade: string }[], rows: readonly number[]): Map<string, number[]> => {
  const grades = new Map<string, number[]>();
  for (const row of rows) {
    const grade = plainMarks(table[row]!.grade);
    const known = grades.get(grade);
    if (known === undefined) grades.set(grade, [row]);
    else known.push(row);
  }
  return grades;
};

/**
 * The parts of a job that are planned apart: grade by grade, and within a grade what no stock has in common. A piece goes on stock at least
 * as wide and as thick as it is, one piece across; one without a size goes on any. So a wider board serves a narrower piece where that
 * costs less, and is then planned together with it.
 */
export const cuttingGroups = (job: CuttingJob): CuttingGroup[] | Problem<ImpossibleSection> => {
  const pieces = byGrade(job.pieces, [...job.pieces.keys()]);
  const stock = byGrade(job.stock, job.stock.flatMap(({ available }, row) => (available > 0 ? [row] : [])));
  const groups: CuttingGroup[] = [];
  for (const grade of [...pieces.keys()].sort()) {
    const rows = pieces.get(grade)!;
    const ofGrade = stock.get(grade);
    if (ofGrade === undefined) {
      const longest = rows.reduce((one, other) => (job.pieces[other]!.length.gt(job.pieces[one]!.length) ? other : one));
      const { label, length, grade: named } = job.pieces[longest]!;
      const isThere = job.stock.some((each) => plainMarks(each.grade) === grade);
      return problem(isThere ? "no-stock-available" : "no-stock-of-grade", { piece: called(label, longest), length, grade: named });
    }
    const found = groupsOfGrade(job, grade, rows, ofGrade);
    if ("problem" in found) return found;
    groups.push(...found);
  }
  return groups;
};
