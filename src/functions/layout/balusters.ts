import { balusterSpacing, repeatedSpacing, USUAL_GAP } from "../../solver/layout/baluster-spacing";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, unit } from "../declare";

export const BALUSTERS = declare({
  id: "BALUSTERS",
  group: "Layout",
  says: "Fewest balusters with equal gaps that keep the gaps within the limit.",
  parameters: {
    opening: { kind: "length", sign: "positive", says: "Clear opening between posts; with `repeat`, the run of a step." },
    width: { kind: "length", sign: "positive", says: "Width of a baluster." },
    maxGap: { kind: "length", sign: "positive", default: USUAL_GAP, says: "Widest clear gap allowed." },
    repeat: { kind: "flag", default: false, says: "TRUE for one run of a stair that goes on: as many gaps as balusters." },
    unit,
  },
  result: {
    kind: "row",
    says: "Three cells: count, gap, and a note where the gap equals the limit.",
    columns: {
      count: { kind: "count", says: "Balusters." },
      gap: { kind: "length", says: "Clear gap, equal all along." },
      note: { kind: "text", says: "Says when the gap equals the limit: a ball of that size touches both sides." },
    },
  },
  problems: {
    "no-room-for-balusters": {
      cell: "#VALUE!",
      says:
        "width: {width} leaves no gap in {opening} (balusters wanted: {count}); give thinner balusters, or, where your code allows it, a " +
        "wider gap",
    },
  },
  examples: [
    {
      given: { opening: 52, width: 1.5, maxGap: 4 },
      gives: [[9, 3.85, ""]],
      from:
        "How-to article on distance between balusters: 52 in of 1 1/2 balusters; its rule rounds 52 / 5 1/2 up to 10, the fewest " +
        "is 9 with (52 - 13 1/2) / 10 = 3.85",
    },
    {
      given: { opening: 38.75, width: 1.25, maxGap: 4 },
      gives: [[7, 3.75, ""]],
      from: "School algebra lesson, computed: 6 leave 4.464, 7 leave (38 3/4 - 8 3/4) / 8 = 3 3/4",
    },
    {
      given: { opening: 10, width: 1.25, repeat: true },
      gives: [[2, 3.75, ""]],
      from: "by hand: 10 / (1 1/4 + 3 15/16) = 1.93, so 2, (10 - 2 1/2) / 2 = 3 3/4",
    },
    {
      given: { opening: 9.5, width: 1.5, maxGap: 4 },
      gives: [[1, 4, "gap equals the limit; make it smaller"]],
      from: "by hand: (9 1/2 - 1 1/2) / 2 = 4",
    },
    {
      given: { opening: 10, width: 20, maxGap: 4 },
      fails: "#VALUE!",
      says: 'width: 20" leaves no gap in 10" (balusters wanted: 1); give thinner balusters, or, where your code allows it, a wider gap',
      from: "by hand: 20 is more than 10",
    },
  ],
  source: 
    "Count = (opening - max gap) / (width + max gap), with `repeat` opening / (width + max gap), rounded up, in exact arithmetic; " +
    "gap = (opening - count x width) / (count + 1), with `repeat` over the count alone.",
  caution: CAUTION,
  solve: ({ opening, width, maxGap, repeat }) => {
    const found = repeat ? repeatedSpacing(opening, width, maxGap) : balusterSpacing(opening, width, maxGap);
    if (isProblem(found)) return found;
    return {
      count: found.count,
      gap: found.gap,
      note: found.touches ? "gap equals the limit; make it smaller" : "",
    };
  },
});
