import { call } from "../functions/call";
import { catalogue } from "../functions/catalogue";
import { type Answer, isFailed } from "../functions/cells";
import { spills } from "../functions/describe";
import { planOutside } from "../functions/outside-planner";

/** The error codes the host offers, by the text that shows in a cell. */
const HOST_CODES = {
  "#VALUE!": "invalidValue",
  "#N/A": "notAvailable",
  "#DIV/0!": "divisionByZero",
  "#NUM!": "invalidNumber",
  "#NULL!": "nullReference",
} as const;

const cell = (answer: Answer): unknown =>
  isFailed(answer) ? new CustomFunctions.Error(CustomFunctions.ErrorCode[HOST_CODES[answer.failed]], answer.says) : answer;

const functions = new Map<string, (...given: unknown[]) => unknown>(
  catalogue.map((declaration) => [
    declaration.id,
    (...given) => {
      const answer = call(declaration, given);
      if (Array.isArray(answer)) return answer.map((row) => row.map(cell));
      if (isFailed(answer)) throw cell(answer);
      return spills(declaration) ? [[answer]] : answer;
    },
  ]),
);

// The pane that runs beside them, in a shared runtime, finds the very functions of the sheet under this name.
Object.assign(globalThis, { treadsheetFunctions: functions });
// The command finds here how plans of a longer search come into the sheet it works out.
Object.assign(globalThis, { treadsheetPlanOutside: planOutside });

for (const [id, solve] of functions) CustomFunctions.associate(id, solve);
