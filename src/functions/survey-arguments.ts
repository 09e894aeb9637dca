import { STAIR_LABELS } from "../solver/stair-labels";

/** What goes on the rough steps and floors: the arguments of the functions that read rough rises. */
export const LAYERS = {
  treadThickness: { kind: "length", sign: "not negative", plausible: "rise", says: "Thickness of the finished tread." },
  lowerBuildUp: {
    kind: "length",
    sign: "not negative",
    plausible: "floor",
    default: STAIR_LABELS.lowerBuildUp.default.inches,
    says: "Floor still to be laid at the bottom.",
  },
  upperBuildUp: {
    kind: "length",
    sign: "not negative",
    plausible: "floor",
    default: STAIR_LABELS.upperBuildUp.default.inches,
    says: "Floor still to be laid at the top.",
  },
} as const;
