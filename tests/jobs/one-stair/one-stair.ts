import { type Job, picked } from "./job";

const floors = { input: "floors" };
const layout = { result: "layout" };
const blanks = { result: "blanks" };
const riserPieces = { result: "riser cuts" };
const boards = { input: "boards" };

/**
 * One invented stair, from tape readings to a price. Rough rises add up to 106 1/8. The wall skirt is rolled in by 1.5 degrees about its
 * own slope, so risers meet it 1.5 degrees off plumb and treads 1.1 degrees off square; diagonals were computed from the corners and
 * rounded to a 1/16 tape.
 */
export const oneStair: Job = {
  title: "One stair, from tape to price",
  says: "Open on the right, wall skirt on the left, rough-framed with fourteen risers. The stair, the shop and every price are invented.",
  steps: [
    {
      title: "Survey",
      says: "Type the rough rise of every step and the floors still to be laid; out comes each rise as it will be walked on.",
      inputs: [
        {
          name: "survey",
          says: "Rough rises, sub-tread to sub-tread, from the bottom",
          headings: ["step", "rough rise"],
          rows: [
            [1, "7 9/16"],
            [2, "7 9/16"],
            [3, "7 5/8"],
            [4, "7 9/16"],
            [5, "7 9/16"],
            [6, "7 5/8"],
            [7, "7 9/16"],
            [8, "7 9/16"],
            [9, "7 5/8"],
            [10, "7 9/16"],
            [11, "7 5/8"],
            [12, "7 9/16"],
            [13, "7 9/16"],
            [14, "7 9/16"],
          ],
        },
        {
          name: "floors",
          says: "What still goes on",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["tread thickness", 1],
            ["lower build up", "3/4"],
            ["upper build up", "3/4"],
          ],
        },
      ],
      calls: [
        {
          name: "finished",
          says: "Finished rises: the first gains the tread and loses the floor, the last the other way round",
          id: "FINISHED",
          args: [
            { input: "survey", column: "rough rise" },
            picked(floors, "tread thickness"),
            picked(floors, "lower build up"),
            picked(floors, "upper build up"),
          ],
        },
      ],
    },
    {
      title: "Layout",
      says: "Type what is known of the stair; out comes every size that follows from it. Try 9 for the run and watch what moves below.",
      inputs: [
        {
          name: "stair",
          says: "The stair as it is planned",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["total rise", "8' 10 1/8\""],
            ["risers", 14],
            ["run", 10],
            ["nosing", "1 1/4"],
            ["riser thickness", "3/4"],
            ["width", "36 3/4"],
            ["open end", "right"],
            ["overhang", "1 1/4"],
            ["return width", "1 1/4"],
            ["run past", "1/4"],
            ["lap", "1/4"],
            ["skirt thickness", "3/4"],
            ["stringer board", "11 1/4"],
            ["opening", "10' 3\""],
            ["floor thickness", "11 1/4"],
            ["handrails", "one"],
            ["handrail height", 36],
            ["fall height", "98 1/2"],
            ["guard", "yes"],
            ["guard height", 36],
            ["guard gap", "3 7/8"],
          ],
        },
      ],
      calls: [
        {
          name: "layout",
          says: "The whole flight",
          id: "LAYOUT",
          args: [{ stack: [floors, { input: "stair" }] }],
        },
      ],
    },
    {
      title: "Story pole",
      says: "Nothing to type; out come the marks for a pole, each rounded from its exact height, so that no rounding adds up.",
      inputs: [],
      calls: [
        {
          name: "pole",
          says: "Finished treads over the lower floor, to 1/16",
          id: "STORYPOLE",
          args: [picked(layout, "total rise"), picked(layout, "risers"), 16],
        },
      ],
    },
    {
      title: "Code check",
      says:
        "Type a code; out comes every limit beside the plan and the steps as framed. The plan passes, the framing does not: nobody " +
        "dropped the stringers.",
      inputs: [{ name: "rules", says: "The code", headings: ["label", "value"], labelled: true, rows: [["code", "irc-2021"]] }],
      calls: [
        {
          name: "check",
          says: "Plan and finished rises against the code",
          id: "CHECK",
          args: [layout, picked({ input: "rules" }, "code"), { beside: [{ input: "survey", column: "step" }, { result: "finished" }] }],
        },
      ],
    },
    {
      title: "Order",
      says: "Type the blanks the yard has; out comes which to buy, what is ripped and cut off each, and what the rip costs.",
      inputs: [
        {
          name: "yard",
          says: "Blanks to be had, in inches",
          headings: ["label", "length", "width", "thickness", "price"],
          rows: [
            ["oak blank 36", 36, "11 1/2", 1, 46],
            ["oak blank 42", 42, "11 1/2", 1, 54],
            ["oak blank 48", 48, "11 1/2", 1, 61.5],
            ["oak nosing 48", 48, "3 1/2", 1, 19.5],
          ],
        },
      ],
      calls: [
        {
          name: "blanks",
          says: "Sizes needed",
          id: "BLANK",
          args: [layout],
        },
        {
          name: "order",
          says: "What to order",
          id: "ORDER",
          args: [layout, { input: "yard" }],
        },
      ],
    },
    {
      title: "Cut plan",
      says: "Type riser readings and the boards to be had; out come cut lengths, which board each is cut from, and what to buy.",
      inputs: [
        {
          name: "riser readings",
          says: "Risers, read at the back",
          headings: ["step", "height", "top", "bottom", "diagonal", "second diagonal", "cut height", "left flare"],
          rows: [
            [1, "7 9/16", "36 9/16", "36 3/4", "37 5/16", "37 1/2", "6 9/16", -1.1],
            [2, "7 9/16", "36 5/8", "36 7/8", "37 7/16", "37 9/16", "6 13/16", -1.1],
            [3, "7 5/8", "36 1/2", "36 11/16", "37 1/4", "37 1/2", "6 13/16", -1.1],
            [4, "7 9/16", "36 11/16", "36 7/8", "37 7/16", "37 5/8", "6 13/16", -1.1],
            [5, "7 9/16", "36 5/8", "36 13/16", "37 3/8", "37 9/16", "6 13/16", -1.1],
            [6, "7 5/8", "36 9/16", "36 13/16", "37 3/8", "37 9/16", "6 13/16", -1.1],
            [7, "7 9/16", "36 5/8", "36 13/16", "37 3/8", "37 9/16", "6 13/16", -1.1],
            [8, "7 9/16", "36 3/4", "36 15/16", "37 1/2", "37 11/16", "6 13/16", -1.1],
            [9, "7 5/8", "36 5/8", "36 7/8", "37 7/16", "37 5/8", "6 13/16", -1.1],
            [10, "7 9/16", "36 1/2", "36 11/16", "37 1/4", "37 1/2", "6 13/16", -1.1],
            [11, "7 5/8", "36 11/16", "36 15/16", "37 1/2", "37 11/16", "6 13/16", -1.1],
            [12, "7 9/16", "36 9/16", "36 3/4", "37 5/16", "37 1/2", "6 13/16", -1.1],
            [13, "7 9/16", "36 5/8", "36 3/4", "37 5/16", "37 9/16", "6 13/16", -1.1],
            [14, "7 9/16", "36 9/16", "36 3/4", "37 5/16", "37 1/2", "6 13/16", -1.1],
          ],
        },
        {
          name: "boards",
          says: "Riser boards to be had, and one on the rack",
          headings: ["label", "length", "width", "thickness", "price", "available", "owned"],
          rows: [
            ["rack 5 ft", "5'", "7 1/4", "3/4", "", 1, "yes"],
            ["poplar 8 ft", "8'", "7 1/4", "3/4", 18, "any", "no"],
            ["poplar 10 ft", "10'", "7 1/4", "3/4", 22.4, 2, "no"],
            ["poplar 16 ft", "16'", "7 1/4", "3/4", 38, "any", "no"],
          ],
        },
        {
          name: "saw",
          says: "The saw",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["kerf", "1/8"],
            ["trim", "1/4"],
          ],
        },
      ],
      calls: [
        {
          name: "riser cuts",
          says: "Cut lengths and angles of the risers",
          id: "RISERFIT",
          args: [{ input: "riser readings" }, picked(layout, "open end"), picked(layout, "run past"), picked(layout, "riser thickness")],
        },
        {
          name: "cuts",
          says: "Which board each riser is cut from",
          id: "CUTS",
          args: [riserPieces, boards, picked({ input: "saw" }, "kerf"), picked({ input: "saw" }, "trim")],
        },
        {
          name: "buy",
          says: "Boards to buy",
          id: "BUY",
          args: [riserPieces, boards, picked({ input: "saw" }, "kerf"), picked({ input: "saw" }, "trim")],
        },
        {
          name: "plan",
          says: "How good the plan is",
          id: "PLAN",
          args: [riserPieces, boards, picked({ input: "saw" }, "kerf"), picked({ input: "saw" }, "trim")],
        },
      ],
    },
    {
      title: "Fit",
      says:
        "Type the readings of the next five treads; out come lengths, saw angles, tilt and mitre of each, and the notch for the " +
        "risers above.",
      inputs: [
        {
          name: "tread readings",
          says: "Treads, read at the sub-tread with a 1/16 tape",
          headings: ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"],
          rows: [
            [1, 10, "36 3/4", "36 5/8", "38 3/16", "37 7/8", -1.5],
            [2, 10, "36 13/16", "36 5/8", "38 1/8", 38, -1.5],
            [3, 10, "36 11/16", "36 1/2", "38 1/16", "37 13/16", -1.5],
            [4, 10, "36 3/4", "36 11/16", "38 3/16", "37 15/16", -1.5],
            [5, 10, "36 7/8", "36 11/16", "38 3/16", 38, -1.5],
          ],
        },
        { name: "room", says: "Room in the notch", headings: ["label", "value"], labelled: true, rows: [["clearance", "1/32"]] },
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
          ],
        },
        {
          name: "notch",
          says: "Notch in each riser's lower right corner: width, then height",
          id: "NOTCH",
          args: [
            picked(layout, "skirt thickness"),
            picked(layout, "run past"),
            picked(layout, "lap"),
            picked({ input: "room" }, "clearance"),
          ],
        },
      ],
    },
    {
      title: "Takeoff",
      says: "Type the bead and the cartridge; out comes how many cartridges to open.",
      inputs: [
        {
          name: "adhesive",
          says: "Three beads under each of thirteen treads",
          headings: ["label", "value"],
          labelled: true,
          rows: [
            ["bead length", "119' 5 1/4\""],
            ["bead diameter", "1/4"],
            ["cartridge", "10.1 fl oz"],
            ["waste", "10%"],
          ],
        },
      ],
      calls: [
        {
          name: "cartridges",
          says: "Cartridges",
          id: "ADHESIVE",
          args: [
            picked({ input: "adhesive" }, "bead length"),
            picked({ input: "adhesive" }, "bead diameter"),
            picked({ input: "adhesive" }, "cartridge"),
            picked({ input: "adhesive" }, "waste"),
          ],
        },
      ],
    },
    {
      title: "Bid",
      says: "Type the shop's hours, prices and rates; out comes the bid, with the blanks and boards from above in it.",
      inputs: [
        {
          name: "work",
          says: "What else goes into the stair",
          headings: ["item", "quantity", "unit"],
          rows: [
            ["adhesive", { result: "cartridges" }, "each"],
            ["mitred return", picked(blanks, "return", "quantity"), "each"],
            ["fit treads", 7.5, "hour"],
            ["fit risers", 4, "hour"],
            ["mitre returns", 3.25, "hour"],
          ],
        },
        {
          name: "prices",
          says: "The shop's prices",
          headings: ["item", "price", "unit"],
          rows: [
            ["adhesive", 8.4, "each"],
            ["mitred return", 6.75, "each"],
            ["labour", 58, "hour"],
          ],
        },
        {
          name: "terms",
          says: "The shop's rates",
          headings: ["label", "rate"],
          labelled: true,
          rows: [
            ["overhead on cost", "12%"],
            ["profit of price", "15%"],
            ["tax on price", "6.5%"],
          ],
        },
      ],
      calls: [
        {
          name: "blank goods",
          says: "Blanks, from the order; what no blank covers is priced below",
          id: "EXTEND",
          args: [{ result: "order" }, { result: "order" }],
        },
        {
          name: "board goods",
          says: "Boards, from the cut plan",
          id: "EXTEND",
          args: [{ result: "buy" }, { result: "buy" }],
        },
        {
          name: "shop goods",
          says: "Everything else",
          id: "EXTEND",
          args: [{ input: "work" }, { input: "prices" }],
        },
        {
          name: "bid",
          says: "The bid",
          id: "BID",
          args: [
            { stack: [{ result: "blank goods" }, { result: "board goods" }, { result: "shop goods" }] },
            { input: "terms" },
          ],
        },
        {
          name: "spare",
          says: "Price of one spare blank left with the client, at the same profit",
          id: "SELLINGPRICE",
          args: [
            picked({ result: "blank goods" }, "oak blank 42", "price"),
            picked({ input: "terms" }, "profit of price"),
            "margin",
          ],
        },
      ],
    },
  ],
};
