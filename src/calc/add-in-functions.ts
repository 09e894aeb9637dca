import { configuration, node, text, value, within } from "./configuration-xml";
import { type ListedFunction, methodName } from "./listed-functions";

const parameterNode = ({ name, description }: ListedFunction["parameters"][number], index: number): string =>
  node(`a${index}`, [text("DisplayName", name), text("Description", description)]);

const functionNode = (listed: ListedFunction, namespace: string): string =>
  node(methodName(listed), [
    text("DisplayName", `${namespace}.${listed.name}`),
    text("Description", listed.description),
    value("Category", "Add-In"),
    within("Parameters", listed.parameters.map(parameterNode)),
  ]);

/** What Calc shows of the functions of a component: names, texts and arguments in its function wizard (com.sun.star.sheet.AddIn). */
const componentNode = (component: string, functions: readonly ListedFunction[]): string =>
  node(component, [within("AddInFunctions", functions.map((one) => `\n${functionNode(one, component.toUpperCase())}`))]);

export const addInFunctions = (components: Readonly<Record<string, readonly ListedFunction[]>>): string =>
  configuration("CalcAddIns", [
    within("AddInInfo", Object.entries(components).map(([component, functions]) => componentNode(component, functions))),
  ]);
