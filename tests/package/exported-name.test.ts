import { catalogue } from "../../src/functions/catalogue";
import { exportedName } from "../../src/package/exported-name";

test("a function is called by its words, the first small, each further one with a capital", () => {
  expect(exportedName({ id: "RISERS" })).toBe("risers");
  expect(exportedName({ id: "RISERHEIGHT", words: "riser height" })).toBe("riserHeight");
  expect(exportedName({ id: "TOMM", words: "to mm" })).toBe("toMm");
});

test("the words of a name are the name, and no two functions share one", () => {
  for (const { id, words } of catalogue) expect((words ?? id).replaceAll(" ", "").toUpperCase()).toBe(id);
  expect(new Set(catalogue.map(exportedName)).size).toBe(catalogue.length);
});

// What a script cannot declare (ECMA-262, Reserved Words) is no name of a function.
test.each(catalogue.map(exportedName))("%s is a name that a script can declare", (name) => {
  expect(() => new Function(`"use strict"; const ${name} = 1; return ${name};`)).not.toThrow();
});
