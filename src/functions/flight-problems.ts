import { STAIR_PROBLEMS } from "./stair-problems";

/** Wording of stairs and tables of flights that make no stair of several flights. */
export const FLIGHT_PROBLEMS = {
  ...STAIR_PROBLEMS,
  "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise, finish floor to finish floor" },
  "risers-not-in-all": {
    cell: "#VALUE!",
    says:
      "risers: the flights have {found} in all, which disagrees with {given} of the stair; change one of them, or leave the stair's " +
      "out",
  },
  "flush-top": { cell: "#VALUE!", says: "top tread: must be floor for flights, whose last tread is the landing or the floor; got flush" },
  "flight-without-run": { cell: "#VALUE!", says: "run: is missing for flight {flight}; give run in the flights, or in the stair" },
  "flight-without-width": {
    cell: "#VALUE!", says: "width: is missing for flight {flight}; give width, skirt to skirt, in the flights, or in the stair",
  },
  "last-flight-has-no-landing": {
    cell: "#VALUE!",
    says:
      "{column}: flight {flight} is the last and ends on the upper floor, not on a landing; leave {column} out, or add the flight " +
      "above",
  },
  "well-without-half-turn": {
    cell: "#VALUE!", says: "well: flight {flight} makes no half turn; leave the well out, or write half left or half right",
  },
  "set-back-without-turn": {
    cell: "#VALUE!", says: "set back: flight {flight} makes no turn; leave the set back out, or write the turn",
  },
  "set-back-over-landing": {
    cell: "#VALUE!", says: "set back: {setBack} at flight {flight} leaves nothing of the landing, which has {room} that way",
  },
  "flights-out-of-order": {
    cell: "#VALUE!", says: "flight: {flight} stands after {before}; give the flights from the bottom up",
  },
} as const;
