// Reads manifests as a JSON list of texts and answers with a JSON list of { faults, root }.
// A process of its own: the XML library is an ES module, which the tests cannot load.
import { fileURLToPath } from "node:url";
import { readFileSync } from "node:fs";
import { text } from "node:stream/consumers";
import { XmlDocument, XsdValidator } from "libxml2-wasm";
import { xmlRegisterFsInputProviders } from "libxml2-wasm/lib/nodejs.mjs";

xmlRegisterFsInputProviders();
const schemaFile = fileURLToPath(new URL("manifest.xsd", import.meta.url));
const validator = XsdValidator.fromDoc(XmlDocument.fromString(readFileSync(schemaFile, "utf8"), { url: schemaFile }));

const tree = (element) => {
  const children = [];
  for (let node = element.firstChild; node; node = node.next) if (node.attrs !== undefined) children.push(tree(node));
  return {
    name: element.name,
    attributes: Object.fromEntries(element.attrs.map(({ name, content }) => [name, content])),
    text: element.content.trim(),
    children,
  };
};

const read = (manifest) => {
  let document;
  try {
    document = XmlDocument.fromString(manifest);
  } catch (error) {
    return { faults: [`not well-formed: ${error.message}`] };
  }
  const faults = [];
  try {
    validator.validate(document);
  } catch (error) {
    faults.push(...(error.details?.map(({ message, line }) => `line ${line}: ${message.trim()}`) ?? [error.message]));
  }
  return { faults, root: tree(document.root) };
};

const manifests = JSON.parse(await text(process.stdin));
process.stdout.write(JSON.stringify(manifests.map(read)));
