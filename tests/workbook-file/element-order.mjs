// Reads { orders, parts } as JSON and answers with what is out of order: elements that are not in the list of their parent's children, or
// stand before one they must follow. A process of its own: the XML library is an ES module. Nothing of the project is used.
import { text } from "node:stream/consumers";
import { XmlDocument } from "libxml2-wasm";

const { orders, parts } = JSON.parse(await text(process.stdin));

const check = (element, part, found) => {
  const order = orders[element.name];
  let last = -1;
  for (let node = element.firstChild; node; node = node.next) {
    if (node.attrs === undefined) continue;
    const place = order === undefined ? 0 : order.indexOf(node.name);
    if (order !== undefined && (place < 0 || place < last)) found.push(`${part}: ${node.name} in ${element.name}`);
    last = place;
    check(node, part, found);
  }
};

const found = [];
const seen = [];
for (const [name, xml] of parts) {
  const document = XmlDocument.fromString(xml);
  seen.push(document.root.name);
  check(document.root, name, found);
  document.dispose();
}
process.stdout.write(JSON.stringify({ found, seen }));
