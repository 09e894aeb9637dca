import path from "node:path";
import ts from "typescript";

const project = path.resolve(__dirname, "../..");
const folder = path.join(project, "src/excel");
const TYPES = "@types/office-js/index.d.ts";

/** A member of the platform's interface as its types declare it, with the requirement set its documentation names. */
export interface CalledMember {
  readonly member: string;
  readonly set: string | undefined;
  readonly since: string | undefined;
}

const nameOf = (declaration: ts.Declaration): string => {
  const names: string[] = [];
  for (let node: ts.Node = declaration; node.parent !== undefined; node = node.parent) {
    if ("name" in node && node.name !== undefined && ts.isIdentifier(node.name as ts.Node))
      names.unshift((node.name as ts.Identifier).text);
  }
  return names.join(".");
};

/** "The following outlines support information for Outlook": the sets called Mailbox say nothing of Excel. */
const API_SET = /\[Api set: (?!Mailbox )(\w+) (\d+\.\d+)/;

/** Every member of the platform that a file of src/excel names, by the compiler's own reading. */
export const calledMembers = (): ReadonlyMap<string, readonly CalledMember[]> => {
  const files = ts.sys.readDirectory(folder, [".ts"]);
  const program = ts.createProgram(files, {
    target: ts.ScriptTarget.ES2022,
    lib: ["lib.es2022.d.ts", "lib.dom.d.ts", "lib.dom.iterable.d.ts"],
    types: ["office-js"],
    module: ts.ModuleKind.CommonJS,
    moduleResolution: ts.ModuleResolutionKind.Node10,
    strict: true,
    skipLibCheck: true,
    esModuleInterop: true,
    resolveJsonModule: true,
    noEmit: true,
  });
  const checker = program.getTypeChecker();
  const found = new Map<string, CalledMember[]>();
  for (const file of files) {
    const source = program.getSourceFile(file);
    if (source === undefined) throw new Error(`The compiler did not read ${file}.`);
    const members = new Map<string, CalledMember>();
    const visit = (node: ts.Node): void => {
      // What only names a type calls nothing.
      if (ts.isTypeNode(node)) return;
      if (ts.isIdentifier(node)) {
        const symbol = ts.isBindingElement(node.parent) && !ts.isArrayBindingPattern(node.parent.parent)
          ? checker.getTypeAtLocation(node.parent.parent).getProperty((node.parent.propertyName ?? node.parent.name).getText())
          : checker.getSymbolAtLocation(node);
        const declaration = symbol?.declarations?.[0];
        if (
          symbol !== undefined &&
          declaration !== undefined &&
          declaration.getSourceFile().fileName.endsWith(TYPES) &&
          !ts.isModuleDeclaration(declaration)
        ) {
          const said = ts
            .getJSDocCommentsAndTags(declaration)
            .map((comment) => comment.getText())
            .join(" ");
          const [, set, since] = API_SET.exec(said) ?? [];
          const member = nameOf(declaration);
          members.set(member, { member, set, since });
        }
      }
      node.forEachChild(visit);
    };
    visit(source);
    if (members.size > 0)
      found.set(
        path.basename(file, ".ts"),
        [...members.values()].sort((one, other) => one.member.localeCompare(other.member)),
      );
  }
  return found;
};
