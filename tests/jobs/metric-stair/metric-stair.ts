import { type Call, type Job, picked } from "../one-stair/job";

const layout = { result: "layout" };
const takeoff = { result: "takeoff" };
const floors = { input: "floors" };
const saw = { input: "saw" };
const riserPieces = { result: "riser cuts" };
const boards = { input: "boards" };

const floor = (label: string): Call => picked(floors, label);

/** Rough rises in millimetres: stringers dropped by tread less floor, 7 mm; the fifth sub-tread is the low one. */
const ROUGH: readonly number[] = [176, 183, 182, 184, 175, 189, 185, 184, 184, 184, 183, 183, 184, 183, 191];

/**
 * One invented stair in millimetres, from survey to ticket: 2750 in fifteen risers, open on the right, a wall skirt on the left that is
 * 0.7 degrees out of square and leans in by one degree. Diagonals were computed from the corners and rounded to whole millimetres.
 */
export const metricStair: Job = {
  title: "One stair in millimetres, from survey to ticket",
  says: "Open on the right, wall skirt on the left, rough-framed with fifteen risers. The stair, the shop and every price are invented.",
  steps: [
    {
      title: "Survey",
      says: "Rough rises and floors; out come the finished rises, how alike they are, and the packing that makes them equal.",
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
            ["tread thickness", 27],
            ["lower build up", 20],
            ["upper build up", 20],
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
          args: [{ input: "survey", column: "rough rise" }, floor("tread thickness"), floor("lower build up"), floor("upper build up")],
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
            ["nosing", 25],
            ["riser thickness", 18],
            ["width", "92 cm"],
            ["open end", "right"],
            ["overhang", 25],
            ["return width", 25],
            ["run past", 6],
            ["lap", 6],
            ["skirt thickness", 18],
            ["skirt shows", 50],
            ["stringer board", 286],
            ["headroom", 2000],
            ["opening", 3150],
            ["floor thickness", 285],
            ["handrails", "one"],
            ["handrail height", 900],
            ["fall height", 2567],
            ["guard", "yes"],
            ["guard height", 900],
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
        { name: "balusters", says: "Balusters to a run", id: "BALUSTERS", args: [picked(layout, "run"), 32, 99, true, "mm"] },
        // Packed, every rise is the unit rise.
        {
          name: "riser heights",
          says: "Ripped height of every riser",
          id: "RISERHEIGHT",
          args: [{ stack: ROUGH.map(() => picked(layout, "unit rise")) }, floor("tread thickness"), picked(layout, "lap"), 175],
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
          rows: [
            ["oak blank 900", 900, 280, 27, 36],
            ["oak blank 1000", 1000, 280, 27, 41],
            ["oak blank 1100", "1.1 m", 280, 27, 46],
            ["oak nosing 1000", 1000, 90, 27, 14.5],
          ],
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
          says: "Risers, read at the back to a millimetre with the sub-treads packed",
          headings: ["step", "height", "top", "bottom", "diagonal", "second diagonal"],
          rows: [
            [1, 176, 921, 923, 938, 940],
            [2, 183, 920, 921, 938, 939],
            [3, 183, 922, 923, 940, 941],
            [4, 183, 921, 923, 939, 941],
            [5, 183, 919, 921, 938, 938],
            [6, 183, 920, 922, 938, 940],
            [7, 183, 921, 922, 939, 940],
            [8, 183, 922, 924, 940, 942],
            [9, 183, 920, 921, 938, 939],
            [10, 183, 921, 923, 939, 941],
            [11, 183, 919, 920, 937, 938],
            [12, 183, 920, 922, 938, 940],
            [13, 183, 922, 923, 940, 941],
            [14, 183, 921, 923, 939, 941],
            [15, 190, 920, 921, 939, 940],
          ],
        },
        {
          name: "boards",
          says: "Riser boards to be had",
          headings: ["label", "length", "width", "thickness", "price"],
          rows: [
            ["pine 2.4 m", "2.4 m", 175, 18, 12.8],
            ["pine 3.6 m", 3600, 175, 18, 18.9],
            ["pine 4.2 m", 4200, 175, 18, 21.6],
          ],
        },
        {
          name: "saw",
          says: "The saw",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["kerf", 3],
            ["trim", 5],
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
          rows: [
            [1, 250, 921, 923, 953, 957, -1],
            [2, 250, 920, 922, 953, 955, -1],
            [3, 250, 922, 923, 954, 957, -1],
            [4, 250, 921, 923, 953, 957, -1],
            [5, 250, 919, 921, 952, 954, -1],
          ],
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
            ["bead diameter", "6 mm"],
            ["cartridge", "310 ml"],
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
          rows: [
            ["tread with one return", 0.45, "each"],
            ["landing nosing", 0.4, "each"],
            ["riser", 0.25, "each"],
            ["open skirt", 1.5, "each"],
            ["closed skirt", 2, "each"],
            ["mitred return", 0.25, "each"],
            ["run past riser", 0.05, "each"],
            ["notch", 0.1, "each"],
            ["scribed end", 0.15, "each"],
            ["cove", 0.02, "ft"],
            ["screws", 0, "each"],
            ["nails", 0, "each"],
            ["adhesive bead", 0, "m"],
            ["finish area", 0.01, "sq ft"],
            ["protection sheets", 0.1, "each"],
          ],
        },
        {
          name: "prices",
          says: "The shop's prices; 0 stands in the order or the cut plan",
          headings: ["item", "price", "unit"],
          rows: [
            ["tread with one return", 0, "each"],
            ["landing nosing", 0, "each"],
            ["riser", 0, "each"],
            ["open skirt", 0, "each"],
            ["closed skirt", 0, "each"],
            ["mitred return", 6.75, "each"],
            ["run past riser", 0, "each"],
            ["notch", 0, "each"],
            ["scribed end", 0, "each"],
            ["cove", 1.15, "ft"],
            ["screws", 0.11, "each"],
            ["nails", 0.03, "each"],
            ["adhesive bead", 0, "m"],
            ["finish area", 0, "sq m"],
            ["protection sheets", 14, "each"],
            ["adhesive", 8.4, "each"],
            ["labour", 45, "hour"],
          ],
        },
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
            0.12,
            0.15,
            "margin",
            0.2,
          ],
        },
      ],
    },
  ],
};
