/** What functions.json says of a function: https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json */
export interface ListedFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    /** Its type in UNO where a cell alone may stand: Calc then asks for each cell of an array by itself. Any otherwise. */
    readonly unoType?: "string";
  }[];
  readonly result: { readonly dimensionality: string };
}

/** Calc calls a function by the component's name and the method's, in capitals: `stair` and `risers` are STAIR.RISERS, in files too. */
export const COMPONENT = "stair";

export const methodName = ({ id }: ListedFunction): string => id.toLowerCase();

/** The module of our interfaces, and the one whose methods they are. */
export const MODULE = "treadsheet";
export const INTERFACE = "XStair";
