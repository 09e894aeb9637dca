import { ALLOCATE } from "./bid/allocate";
import { ALTERNATES } from "./bid/alternates";
import { BID } from "./bid/bid";
import { EXTEND } from "./bid/extend";
import { PRICECHANGE } from "./bid/pricechange";
import { PROGRESSBILLING } from "./bid/progressbilling";
import { QUOTE } from "./bid/quote";
import { SELLINGPRICE } from "./bid/sellingprice";
import { BIDVARIANCE } from "./books/bidvariance";
import { JOBCOST } from "./books/jobcost";
import { MONTHCLOSE } from "./books/monthclose";
import { RACK } from "./books/rack";
import { RECONCILE } from "./books/reconcile";
import { STOCKLEDGER } from "./books/stockledger";
import { VARIANCE } from "./books/variance";
import { CHECK } from "./code/check";
import { CODES } from "./code/codes";
import { LIMIT } from "./code/limit";
import type { Declaration } from "./declare";
import { BEVEL } from "./fit/bevel";
import { GAP } from "./fit/gap";
import { MARKS } from "./fit/marks";
import { MISREAD } from "./fit/misread";
import { NEXTSTEP } from "./fit/nextstep";
import { NOTCH } from "./fit/notch";
import { RELIEF } from "./fit/relief";
import { RISERFIT } from "./fit/riserfit";
import { RISERHEIGHT } from "./fit/riserheight";
import { RISERMARKS } from "./fit/risermarks";
import { TREADFIT } from "./fit/treadfit";
import { ARC } from "./layout/arc";
import { BALUSTERS } from "./layout/balusters";
import { CHOICES } from "./layout/choices";
import { FLIGHTS } from "./layout/flights";
import { HEADROOM } from "./layout/headroom";
import { LAYOUT } from "./layout/layout";
import { ONEFLIGHT } from "./layout/oneflight";
import { OPENING } from "./layout/opening";
import { PITCH } from "./layout/pitch";
import { RAIL } from "./layout/rail";
import { RISERS } from "./layout/risers";
import { SKIRT } from "./layout/skirt";
import { STARTINGSTEP } from "./layout/startingstep";
import { STORYPOLE } from "./layout/storypole";
import { STRINGER } from "./layout/stringer";
import { TREADBALUSTERS } from "./layout/treadbalusters";
import { WINDERS } from "./layout/winders";
import { WINDERTREADS } from "./layout/windertreads";
import { ACTUAL } from "./notation/actual";
import { PICK } from "./notation/pick";
import { TAPE } from "./notation/tape";
import { TOINCHES } from "./notation/toinches";
import { TOMM } from "./notation/tomm";
import { TOTAL } from "./notation/total";
import { VERSION } from "./notation/version";
import { BLANK } from "./order/blank";
import { ORDER } from "./order/order";
import { EQUALIZE } from "./survey/equalize";
import { FINISHED } from "./survey/finished";
import { LEAN } from "./survey/lean";
import { PACKING } from "./survey/packing";
import { UNIFORMITY } from "./survey/uniformity";
import { ADHESIVE } from "./takeoff/adhesive";
import { HOURS } from "./takeoff/hours";
import { TAKEOFF } from "./takeoff/takeoff";
import { EMC } from "./wood/emc";
import { MOVEMENT } from "./wood/movement";
import { TREADLOAD } from "./wood/treadload";
import { BOARDFEET } from "./yield/boardfeet";
import { BUY } from "./yield/buy";
import { CUTS } from "./yield/cuts";
import { OFFCUTS } from "./yield/offcuts";
import { GLUEUP } from "./yield/glueup";
import { LUMBERORDER } from "./yield/lumberorder";
import { PLAN } from "./yield/plan";
import { SHEETCUTS } from "./yield/sheetcuts";
import { TALLY } from "./yield/tally";
import { TALLYCUTS } from "./yield/tallycuts";

/** Every worksheet function, in the order users see them. */
export const catalogue: readonly Declaration[] = [
  TOINCHES, TOMM, TAPE, ACTUAL, PICK, TOTAL, VERSION,
  FINISHED, EQUALIZE, UNIFORMITY, PACKING, LEAN,
  RISERS, CHOICES, LAYOUT, STORYPOLE, PITCH, STRINGER, SKIRT, OPENING, HEADROOM, WINDERS, WINDERTREADS, STARTINGSTEP,
  BALUSTERS, TREADBALUSTERS, RAIL, FLIGHTS, ONEFLIGHT, ARC,
  CODES, LIMIT, CHECK,
  BLANK, ORDER,
  CUTS, SHEETCUTS, BUY, PLAN, OFFCUTS, BOARDFEET, TALLY, TALLYCUTS, LUMBERORDER, GLUEUP,
  TREADFIT, RISERFIT, MISREAD, NEXTSTEP, MARKS, RISERMARKS, NOTCH, RISERHEIGHT, RELIEF, BEVEL, GAP,
  TAKEOFF, ADHESIVE, HOURS, EXTEND, SELLINGPRICE, BID, QUOTE, ALTERNATES, PRICECHANGE, PROGRESSBILLING, ALLOCATE,
  EMC, MOVEMENT, TREADLOAD,
  STOCKLEDGER, RACK, JOBCOST, MONTHCLOSE, VARIANCE, RECONCILE, BIDVARIANCE,
];
