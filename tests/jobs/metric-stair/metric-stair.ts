import { inventedMetricJob } from "../../../src/sheets/demo/invented-metric-job";
import type { Entry } from "../../../src/sheets/sheet-builder";
import { type Call, type Cell, type Job, picked } from "../one-stair/job";

const layout = { result: "layout" };
const takeoff = { result: "takeoff" };
const floors = { input: "floors" };
const saw = { input: "saw" };
const riserPieces = { result: "riser cuts" };
const boards = { input: "boards" };

const floor = (label: string): Call => picked(floors, label);

const {
  roughRises, floors: { treadThickness, lowerBuildUp, upperBuildUp }, alikeWithin, sizes, balusterWidth, blanks, boards: yard, kerf, trim,
  treads, risersRead, beadDiameter, cartridge, items, terms,
} = inventedMetricJob;

const typed = (entry: Entry | undefined): Cell => entry ?? "";
const rowsOf = (rows: readonly (readonly Entry[])[]): Cell[][] => rows.map((row) => row.map(typed));
const size = (label: string): Cell[] => [label, typed(sizes[label])];

/** Here a figure is a number: what is written off as included is 0, and stands in the order or the cut plan. */
const rated = (figure: Entry | undefined): Cell => (figure === "included" ? 0 : typed(figure));
/** Lines that are bought and not worked. */
const GOODS = ["adhesive", "labour"];

const ROUGH = roughRises.map(Number);

/**
 * The invented job in millimetres as calls of the functions, from survey to ticket: 2750 in fifteen risers, open on the right, a wall skirt
 * on the left that is 0.7 degrees out of square and leans in by one degree. Some lengths are written as texts in other units.
 */
export const metricStair: Job = {
  title: "One stair in millimetres, from survey to ticket",
  says: "Open on the right, wall skirt on the left, rough-framed with fifteen risers. The stair, the shop and every price are invented.",
  steps: [
    {
      title: "Survey",
      says: "Rough rises and floors; out come the finished rises, how alike they are, and what to pack to bring them within 5 mm.",
      inputs: [
        {
          name: "survey",
          says: "Rough rises, sub-tread to sub-tread, from the bottom",
          headings: ["step", "rough rise"],
          rows: ROUGH.map((rise, step) => [step + 1, rise]),
        },
        {
          name: "floors",
          says: "What still goes on",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["tread thickness", typed(treadThickness)],
            ["lower build up", typed(lowerBuildUp)],
            ["upper build up", typed(upperBuildUp)],
          ],
        },
      ],
      calls: [
        {
          name: "finished",
          says: "Finished rises",
          id: "FINISHED",
          args: [{ input: "survey", column: "rough rise" }, floor("tread thickness"), floor("lower build up"), floor("upper build up")],
        },
        { name: "alike", says: "How alike they are", id: "UNIFORMITY", args: [{ result: "finished" }, "10 mm", "mm"] },
        {
          name: "packing",
          says: "Packing under each sub-tread",
          id: "EQUALIZE",
          args: [
            { input: "survey", column: "rough rise" }, floor("tread thickness"), floor("lower build up"), floor("upper build up"),
            typed(alikeWithin), null, null, null, null, null, "mm",
          ],
        },
      ],
    },
    {
      title: "Layout",
      says: "What is known of the stair; out comes every size that follows from it.",
      inputs: [
        {
          name: "stair",
          says: "The stair as it is planned",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["unit", "mm"],
            ["total rise", "2.75 m"],
            ["risers", 15],
            ["run", 250],
            size("nosing"),
            size("riser thickness"),
            ["width", "92 cm"],
            ["open end", "right"],
            size("overhang"),
            size("return width"),
            size("run past"),
            size("lap"),
            size("skirt thickness"),
            size("skirt shows"),
            size("stringer board"),
            size("headroom"),
            size("opening"),
            size("floor thickness"),
            ["handrails", "one"],
            size("handrail height"),
            ["fall height", 2567],
            size("guard"),
            size("guard height"),
            ["guard gap", 93],
          ],
        },
      ],
      calls: [
        { name: "layout", says: "The whole flight", id: "LAYOUT", args: [{ stack: [floors, { input: "stair" }] }] },
        { name: "skirts", says: "Both skirts", id: "SKIRT", args: [layout] },
        { name: "rail", says: "The handrail", id: "RAIL", args: [layout] },
        {
          name: "pole",
          says: "Marks for the sub-treads, to a millimetre",
          id: "STORYPOLE",
          args: [picked(layout, "total rise"), picked(layout, "risers"), null, picked(layout, "tread thickness"), "mm"],
        },
        {
          name: "balusters",
          says: "Balusters to a run",
          id: "BALUSTERS",
          args: [picked(layout, "run"), typed(balusterWidth), 99, true, "mm"],
        },
        {
          name: "riser heights",
          says: "Ripped height of every riser",
          id: "RISERHEIGHT",
          args: [
            { stack: ROUGH.map((_, step) => picked({ result: "packing" }, String(step + 1), "rise")) }, floor("tread thickness"),
            picked(layout, "lap"), 175,
          ],
        },
      ],
    },
    {
      title: "Code check",
      says: "The plan against the code, in the code's own millimetres.",
      inputs: [{ name: "rules", says: "The code", headings: ["label", "value"], labelled: true, rows: [["code", "uk-adk-private"]] }],
      calls: [{ name: "check", says: "The plan against the code", id: "CHECK", args: [layout, picked({ input: "rules" }, "code")] }],
    },
    {
      title: "Order",
      says: "Blanks to be had; out comes which to buy, what is ripped and cut off each, and what the rip costs.",
      inputs: [
        {
          name: "yard",
          says: "Blanks to be had, in millimetres",
          headings: ["label", "length", "width", "thickness", "price"],
          rows: rowsOf(blanks),
        },
      ],
      calls: [
        { name: "blanks", says: "Sizes needed", id: "BLANK", args: [layout] },
        { name: "order", says: "What to order", id: "ORDER", args: [layout, { input: "yard" }] },
      ],
    },
    {
      title: "Cut plan",
      says: "Riser readings and boards; out come cut lengths, which board each is cut from, and what to buy.",
      inputs: [
        {
          name: "riser readings",
          says: "Risers, read at the back to a millimetre with the fifth sub-tread packed",
          headings: ["step", "height", "top", "bottom", "diagonal", "second diagonal"],
          rows: rowsOf(risersRead),
        },
        {
          name: "boards",
          says: "Riser boards to be had",
          headings: ["label", "length", "width", "thickness", "price"],
          rows: rowsOf(yard.filter((board) => board[7] === "").map((board) => board.slice(0, 5))),
        },
        {
          name: "saw",
          says: "The saw",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["kerf", typed(kerf)],
            ["trim", typed(trim)],
          ],
        },
      ],
      calls: [
        {
          name: "riser cuts",
          says: "Cut lengths and angles of the risers",
          id: "RISERFIT",
          args: [
            { beside: [{ input: "riser readings" }, { stack: ["cut height", { result: "riser heights" }] }] },
            picked(layout, "open end"),
            picked(layout, "run past"),
            picked(layout, "riser thickness"),
            null,
            null,
            null,
            "mm",
          ],
        },
        {
          name: "cuts",
          says: "Which board each riser is cut from",
          id: "CUTS",
          args: [riserPieces, boards, picked(saw, "kerf"), picked(saw, "trim"), null, "mm"],
        },
        {
          name: "buy",
          says: "Boards to buy",
          id: "BUY",
          args: [riserPieces, boards, picked(saw, "kerf"), picked(saw, "trim"), null, "mm"],
        },
      ],
    },
    {
      title: "Fit",
      says: "Readings of the next five treads; out come lengths, saw angles, tilt and mitre of each, and the notch for the risers above.",
      inputs: [
        {
          name: "tread readings",
          says: "Treads, read to a millimetre from the finished riser behind to the finished riser in front",
          headings: ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"],
          rows: rowsOf(treads),
        },
      ],
      calls: [
        {
          name: "tread cuts",
          says: "Cut lengths, angles and mitres of the treads",
          id: "TREADFIT",
          args: [
            { input: "tread readings" },
            picked(layout, "nosing"),
            picked(layout, "open end"),
            picked(layout, "overhang"),
            picked(layout, "return width"),
            picked(layout, "tread thickness"),
            "both",
            picked(layout, "riser thickness"),
            null,
            null,
            null,
            null,
            "mm",
          ],
        },
        {
          name: "tread acts",
          says: "What is marked and sawn to make each tread",
          id: "MARKS",
          args: [
            { input: "tread readings" },
            picked(layout, "nosing"),
            picked(layout, "open end"),
            picked(layout, "overhang"),
            picked(layout, "return width"),
            picked(layout, "tread thickness"),
            "both",
            picked(layout, "riser thickness"),
            null,
            null,
            null,
            null,
            "mm",
          ],
        },
        {
          name: "notch",
          says: "Notch in each riser's lower right corner: width, then height",
          id: "NOTCH",
          args: [picked(layout, "skirt thickness"), picked(layout, "run past"), picked(layout, "lap"), 1],
        },
      ],
    },
    {
      title: "Takeoff",
      says: "Nothing to type but bead and cartridge; out comes what the stair takes.",
      inputs: [
        {
          name: "tube",
          says: "Bead and cartridge",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["bead diameter", `${String(beadDiameter)} mm`],
            ["cartridge", typed(cartridge)],
          ],
        },
      ],
      calls: [
        { name: "takeoff", says: "What the stair takes", id: "TAKEOFF", args: [layout] },
        {
          name: "cartridges",
          says: "Cartridges for the takeoff's own bead, its unit written to it",
          id: "ADHESIVE",
          args: [
            { join: [picked(takeoff, "adhesive bead", "quantity"), " ", picked(takeoff, "adhesive bead", "unit")] },
            picked({ input: "tube" }, "bead diameter"),
            picked({ input: "tube" }, "cartridge"),
          ],
        },
      ],
    },
    {
      title: "Bid",
      says: "The shop's hours, prices and rates, some of them by the foot; out comes the bid.",
      inputs: [
        {
          name: "rates",
          says: "Hours for one, moulding and finish by the foot as the shop has always rated them",
          headings: ["item", "hours", "unit"],
          rows: items.filter(([item]) => !GOODS.includes(String(item))).map(([item, hours, , unit]) => [item, hours, unit].map(rated)),
        },
        {
          name: "prices",
          says: "The shop's prices; 0 stands in the order or the cut plan",
          headings: ["item", "price", "unit"],
          rows: items.map(([item, , price, unit]) => [item, price, unit].map(rated)),
        },
        { name: "terms", says: "The shop's terms", headings: ["label", "rate"], labelled: true, rows: rowsOf(terms) },
        {
          name: "further",
          says: "What else goes into the stair",
          headings: ["item", "quantity", "unit"],
          rows: [["adhesive", { result: "cartridges" }, "each"]],
        },
      ],
      calls: [
        { name: "hours", says: "Hours", id: "HOURS", args: [takeoff, { input: "rates" }] },
        { name: "labour", says: "Hours, priced", id: "EXTEND", args: [{ result: "hours" }, { input: "prices" }] },
        { name: "goods", says: "What the stair takes, priced", id: "EXTEND", args: [takeoff, { input: "prices" }] },
        { name: "further goods", says: "Adhesive, priced", id: "EXTEND", args: [{ input: "further" }, { input: "prices" }] },
        { name: "blank goods", says: "Blanks, from the order", id: "EXTEND", args: [{ result: "order" }, { result: "order" }] },
        { name: "board goods", says: "Boards, from the cut plan", id: "EXTEND", args: [{ result: "buy" }, { result: "buy" }] },
        {
          name: "bid",
          says: "The bid",
          id: "BID",
          args: [
            { stack: ["labour", "goods", "further goods", "blank goods", "board goods"].map((result) => ({ result })) },
            { input: "terms" },
          ],
        },
      ],
    },
  ],
};
