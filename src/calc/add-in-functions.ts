import { configuration, node, text, value, within } from "./configuration-xml";
import { COMPONENT, type ListedFunction, methodName } from "./listed-functions";

const parameterNode = ({ name, description }: ListedFunction["parameters"][number], index: number): string =>
  node(`a${index}`, [text("DisplayName", name), text("Description", description)]);

const functionNode = (listed: ListedFunction, namespace: string): string =>
  node(methodName(listed), [
    text("DisplayName", `${namespace}.${listed.name}`),
    text("Description", listed.description),
    value("Category", "Add-In"),
    within("Parameters", listed.parameters.map(parameterNode)),
  ]);

/** What Calc shows of the functions: names, texts and arguments in its function wizard (com.sun.star.sheet.AddIn). */
export const addInFunctions = (functions: readonly ListedFunction[], namespace: string): string =>
  configuration("CalcAddIns", [
    within("AddInInfo", [node(COMPONENT, [within("AddInFunctions", functions.map((one) => `\n${functionNode(one, namespace)}`))])]),
  ]);
