import { isProblem } from "../../solver/problem";
import { adhesive } from "../../solver/takeoff/adhesive";
import { cartridge as volumeOf } from "../../solver/takeoff/cartridge";
import { declare } from "../declare";

export const ADHESIVE = declare({
  id: "ADHESIVE",
  group: "Takeoff and bid",
  says: "Cartridges of adhesive for a round bead.",
  parameters: {
    beadLength: {
      kind: "length",
      sign: "positive",
      each: true,
      says:
        "Length of all beads together; a number is inches. A quantity of TAKEOFF goes in with its " +
        'unit, as the text "72.31 ft" or "23.38 m".',
    },
    beadDiameter: { kind: "length", sign: "positive", says: "Diameter of the bead; a number is inches." },
    cartridge: { kind: "text", says: 'What one cartridge holds: a number of US fluid ounces such as 10.1, or text such as "290 ml".' },
    waste: { kind: "rate", of: "the quantity", default: 0.1, says: "Share added for what stays in nozzles and is wiped off." },
  },
  result: { kind: "count", says: "Number of cartridges to open, rounded up." },
  problems: {
    "wide-bead": {
      cell: "#VALUE!",
      says: 'beadDiameter: {diameter} is wider than any bead, {widest} at most; if this is millimetres, write the unit, as in "6 mm"',
    },
    "not-a-volume": { cell: "#VALUE!", says: 'cartridge: read "{text}", which is not a volume; write 10.1 for fluid ounces, or "290 ml"' },
    "volume-comma": { cell: "#VALUE!", says: 'cartridge: read "{text}", which has a comma; write {instead} with a point' },
    "no-volume": { cell: "#VALUE!", says: 'cartridge: must be more than 0, got "{text}"' },
    "volume-in-millilitres": {
      cell: "#VALUE!",
      says: 'cartridge: {text} fluid ounces is over a gallon; if this is millilitres, write "{text} ml", else "{text} fl oz"',
    },
  },
  examples: [
    {
      given: { beadLength: "30' 9\"", beadDiameter: 0.25, cartridge: 10.1, waste: 0 },
      gives: 1,
      from: "from memory, a table from volumes alone: a 1/4 in bead runs 30.9 ft from 10.1 fl oz; 30 ft 9 in is 30.75 ft",
    },
    {
      given: { beadLength: 371, beadDiameter: "1/4", cartridge: "10.1 fl oz" },
      gives: 2,
      from: "by hand: 3.1415927/4 x 1/16 x 371 x 1.1 = 20.03 cu in over 10.1 x 1.8046875 = 18.23 is 1.10",
    },
    {
      given: { beadLength: "12 m", beadDiameter: "6 mm", cartridge: "290 ml" },
      gives: 2,
      from: "by hand: 3.1415927/4 x 0.36 sq cm x 1,200 cm x 1.1 = 373.2 ml over 290 is 1.29",
    },
    {
      given: { beadLength: "23.38 m", beadDiameter: "8 mm", cartridge: "310 ml" },
      gives: 5,
      from: "by hand: 3.1415927/4 x 0.64 sq cm x 2,338 cm x 1.1 = 1,292.7 ml over 310 is 4.17",
    },
    {
      given: { beadLength: 371, beadDiameter: 0.25, cartridge: 290 },
      fails: "#VALUE!",
      says: 'cartridge: 290 fluid ounces is over a gallon; if this is millilitres, write "290 ml", else "290 fl oz"',
      from: "common practice, no source: metric cartridges hold 290 to 310 ml, 290 fl oz would be a pail",
    },
    {
      given: { beadLength: 371, beadDiameter: 0.25, cartridge: "one tube" },
      fails: "#VALUE!",
      says: 'cartridge: read "one tube", which is not a volume; write 10.1 for fluid ounces, or "290 ml"',
      from: "common practice, no source: a tube is no measure, cartridges differ",
    },
  ],
  source:
    "Volume of a round bead, pi/4 x diameter squared x length x (1 + waste), over the volume of a cartridge. A US fluid ounce is " +
    "1.8046875 cubic inches (231 / 128, NIST Handbook 44, appendix C).",
  solve: ({ beadLength, beadDiameter, cartridge, waste }) => {
    const volume = volumeOf(cartridge);
    return isProblem(volume) ? volume : adhesive(beadLength, beadDiameter, volume, waste);
  },
});
