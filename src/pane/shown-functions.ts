import { version } from "../../package.json";
import { catalogue } from "../functions/catalogue";
import { signature } from "../functions/describe";
import { NAMESPACE } from "../functions/formula";
import type { PaneFacts } from "./pane";

/** The version and every worksheet function, as the pane shows them. */
export const shownFunctions = (): Pick<PaneFacts, "version" | "functions"> => ({
  version,
  functions: catalogue.map((declaration) => ({
    id: declaration.id,
    group: declaration.group,
    says: declaration.says,
    formula: `=${NAMESPACE}.${signature(declaration)}`,
  })),
});
