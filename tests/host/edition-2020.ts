import { type Context, runInContext } from "node:vm";
import ts from "typescript";

interface Members {
  readonly statics: readonly string[];
  /** Of what a constructor makes; undefined where it is none. */
  readonly made: readonly string[] | undefined;
}

const FILE = "edition.ts";

/** The globals of ES2020 and their members, as the compiler describes that edition (lib.es2020.d.ts and what it names). */
const globalsOf2020 = (): Readonly<Record<string, Members>> => {
  const options: ts.CompilerOptions = { target: ts.ScriptTarget.ES2020, lib: ["lib.es2020.d.ts"], types: [], noEmit: true };
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (name, ...rest) =>
    name === FILE ? ts.createSourceFile(FILE, "export {};", ts.ScriptTarget.ES2020) : getSourceFile.call(host, name, ...rest);
  const program = ts.createProgram([FILE], options, host);
  const source = program.getSourceFile(FILE);
  if (source === undefined) throw new Error("The compiler did not read the edition.");
  const checker = program.getTypeChecker();
  const namesOf = (type: ts.Type): string[] => checker.getPropertiesOfType(type).map(({ name }) => name);
  return Object.fromEntries(checker.getSymbolsInScope(source, ts.SymbolFlags.Value).map((symbol) => {
    const type = checker.getTypeOfSymbolAtLocation(symbol, source);
    const made = type.getProperty("prototype");
    return [symbol.name, {
      statics: namesOf(type),
      made: made === undefined ? undefined : namesOf(checker.getTypeOfSymbolAtLocation(made, source)),
    }];
  }));
};

/** Runs in the context: every name that the edition does not have goes. Iterators of the edition have next, return and throw alone. */
const TAKE_AWAY = `((known) => {
  const keep = (object, names) => {
    for (const name of Object.getOwnPropertyNames(object))
      // A newer engine's own symbols stay for good.
      if (!names.includes(name) && !Reflect.deleteProperty(object, name) && typeof object[name] !== "symbol")
        throw new Error(name + " cannot be taken away.");
  };
  const own = ["constructor", "prototype", "length", "name"];
  const iterators = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]()));
  const typed = Object.getPrototypeOf(Uint8Array);
  keep(iterators, ["next", "return", "throw"]);
  keep(typed, [...own, ...known.Uint8Array.statics]);
  keep(typed.prototype, [...own, ...known.Uint8Array.made]);
  for (const [name, { statics, made }] of Object.entries(known)) {
    const value = globalThis[name];
    if (value === undefined || value === null || (typeof value !== "object" && typeof value !== "function")) continue;
    if (value === globalThis) continue;
    // A function's own arguments and caller, of old, cannot be taken away.
    if (name === "Function") keep(value.prototype, [...own, "arguments", "caller", ...made]);
    else if (made !== undefined && value.prototype !== undefined) keep(value.prototype, [...own, ...made]);
    keep(value, [...own, ...statics]);
  }
  // A page keeps what is the page's.
  if (typeof document === "undefined") keep(globalThis, ["globalThis", ...Object.keys(known)]);
  else for (const later of ["AggregateError", "FinalizationRegistry", "Iterator", "WeakRef", "structuredClone"]) delete globalThis[later];
})`;

/** A script that leaves a page the members of ES2020 and no later ones. */
export const editionScript = (): string => `${TAKE_AWAY}(${JSON.stringify(globalsOf2020())});`;

/** Leaves a context the names of ES2020 and no later ones. */
export const withEdition2020 = (context: Context): void => {
  const take = runInContext(TAKE_AWAY, context) as (known: unknown) => void;
  take(runInContext(`(${JSON.stringify(globalsOf2020())})`, context));
};
