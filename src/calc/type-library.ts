/** A method of an interface, by the names of its types as UNO writes them: any, [][]any. */
export interface Method {
  readonly name: string;
  readonly returns: string;
  /** What goes in; nothing comes out but what the method returns. */
  readonly parameters: readonly { readonly name: string; readonly type: string }[];
}

// The UNOIDL registry format, unoidl/README.md of LibreOffice: numbers least byte first, offsets from the start of the file.
const MAGIC = "UNOIDL\xff\0";
const MODULE = 0;
const INTERFACE_TYPE = 5;
const IN = 0;
const BASE = "com.sun.star.uno.XInterface";

class Written {
  private readonly bytes: number[] = [];

  get place(): number {
    return this.bytes.length;
  }

  byte(value: number): void {
    this.bytes.push(value);
  }

  number(value: number): void {
    this.bytes.push(value & 0xff, (value >>> 8) & 0xff, (value >>> 16) & 0xff, (value >>> 24) & 0xff);
  }

  /** Characters of US-ASCII by themselves. */
  characters(text: string): void {
    for (const character of text) this.bytes.push(character.charCodeAt(0));
  }

  /** An Idx-String that stands where it is needed, and not elsewhere in the file. */
  text(text: string): void {
    this.number(text.length);
    this.characters(text);
  }

  all(): Uint8Array {
    return Uint8Array.from(this.bytes);
  }

  put(place: number, value: number): void {
    for (const [index, shift] of [0, 8, 16, 24].entries()) this.bytes[place + index] = (value >>> shift) & 0xff;
  }
}

const writeMethod = (file: Written, { name, returns, parameters }: Method): void => {
  file.text(name);
  file.text(returns);
  file.number(parameters.length);
  for (const parameter of parameters) {
    file.byte(IN);
    file.text(parameter.name);
    file.text(parameter.type);
  }
  const exceptions = 0;
  file.number(exceptions);
};

const writeInterface = (file: Written, methods: readonly Method[]): void => {
  file.byte(INTERFACE_TYPE);
  const [bases, optionalBases, attributes] = [1, 0, 0];
  file.number(bases);
  file.text(BASE);
  file.number(optionalBases);
  file.number(attributes);
  file.number(methods.length);
  for (const method of methods) writeMethod(file, method);
};

/** A name that a map leads to, ended by NUL; answers its place. */
const writeName = (file: Written, name: string): number => {
  const { place } = file;
  file.characters(`${name}\0`);
  return place;
};

export interface Interface {
  readonly name: string;
  readonly methods: readonly Method[];
}

/** A type library with the interfaces of one module, as LibreOffice reads it: its binary form, no compiler of the office needed. */
export const typeLibrary = (module: string, interfaces: readonly Interface[]): Uint8Array => {
  const file = new Written();
  file.characters(MAGIC);
  const root = file.place;
  file.number(0);
  file.number(1);
  const moduleName = writeName(file, module);
  // A map is searched by halves, so its names are in order.
  const sorted = [...interfaces].sort((one, other) => (one.name < other.name ? -1 : 1));
  const entries = sorted.map(({ name, methods }) => {
    const [named, place] = [writeName(file, name), file.place];
    writeInterface(file, methods);
    return [named, place] as const;
  });
  const modulePlace = file.place;
  file.byte(MODULE);
  file.number(entries.length);
  for (const [named, place] of entries) {
    file.number(named);
    file.number(place);
  }
  file.put(root, file.place);
  file.number(moduleName);
  file.number(modulePlace);
  return file.all();
};
