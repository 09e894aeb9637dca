import { call } from "../functions/call";
import { catalogue } from "../functions/catalogue";
import { type Answer, isFailed } from "../functions/cells";
import { spills } from "../functions/describe";

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

for (const declaration of catalogue) {
  CustomFunctions.associate(declaration.id, (...given: unknown[]): unknown => {
    const answer = call(declaration, given);
    if (Array.isArray(answer)) return answer.map((row) => row.map(cell));
    if (isFailed(answer)) throw cell(answer);
    return spills(declaration) ? [[answer]] : answer;
  });
}
