import { BID } from "./bid/bid";
import { EXTEND } from "./bid/extend";
import { SELLINGPRICE } from "./bid/sellingprice";
import { CHECK } from "./code/check";
import type { Declaration } from "./declare";
import { NOTCH } from "./fit/notch";
import { RISERFIT } from "./fit/riserfit";
import { TREADFIT } from "./fit/treadfit";
import { LAYOUT } from "./layout/layout";
import { PITCH } from "./layout/pitch";
import { RISERS } from "./layout/risers";
import { STORYPOLE } from "./layout/storypole";
import { PICK } from "./notation/pick";
import { TAPE } from "./notation/tape";
import { TOINCHES } from "./notation/toinches";
import { TOMM } from "./notation/tomm";
import { VERSION } from "./notation/version";
import { BLANK } from "./order/blank";
import { ORDER } from "./order/order";
import { FINISHED } from "./survey/finished";
import { ADHESIVE } from "./takeoff/adhesive";

/** Every worksheet function, in the order users see them. */
export const catalogue: readonly Declaration[] = [
  TOINCHES, TOMM, TAPE, PICK, VERSION,
  FINISHED,
  RISERS, LAYOUT, STORYPOLE, PITCH,
  CHECK,
  BLANK, ORDER,
  TREADFIT, RISERFIT, NOTCH,
  ADHESIVE, EXTEND, SELLINGPRICE, BID,
];
