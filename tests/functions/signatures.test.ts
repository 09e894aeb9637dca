import { readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/functions/catalogue";
import * as tables from "../../src/functions/tables";
import { signatures } from "../../src/generate/signatures";

test("signatures.md is what the declarations say (npm run signatures writes it anew; read its diff)", () => {
  const committed = readFileSync(path.join(__dirname, "signatures.md"), "utf8");
  expect(signatures(catalogue, Object.values(tables).filter((table) => table !== tables.stair), tables.stair)).toBe(committed);
});
