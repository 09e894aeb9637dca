// Reads pairs of XML texts as a JSON list of [before, after] and answers with a JSON list of what differs in each, as a list of sentences.
// A process of its own: the XML library is an ES module, which the tests cannot load. Nothing of the project is used.
import { text } from "node:stream/consumers";
import { XmlDocument } from "libxml2-wasm";

const elements = (element) => {
  const found = [];
  for (let node = element.firstChild; node; node = node.next) if (node.attrs !== undefined) found.push(node);
  return found;
};

/** Text of an element itself, without that of the elements in it. */
const ownText = (element) => {
  const found = [];
  for (let node = element.firstChild; node; node = node.next) if (node.attrs === undefined) found.push(node.content);
  return found.join("");
};

const attributes = (element) =>
  Object.fromEntries(element.attrs.map((one) => [one.prefix ? `${one.prefix}:${one.name}` : one.name, one.content]));

/** A row or a cell by its address, anything else by its name and its place among those of its name. */
const keyed = (children) => {
  const counts = new Map();
  return new Map(children.map((child) => {
    const { r } = attributes(child);
    const count = (counts.get(child.name) ?? 0) + 1;
    counts.set(child.name, count);
    return [`${child.name}[${r ?? count}]`, child];
  }));
};

const differences = (before, after, path) => {
  const found = [];
  const [old, now] = [attributes(before), attributes(after)];
  for (const name of new Set([...Object.keys(old), ...Object.keys(now)]))
    if (old[name] !== now[name]) found.push(`${path}@${name}: ${old[name] ?? "none"} -> ${now[name] ?? "none"}`);
  if (ownText(before) !== ownText(after)) found.push(`${path}: ${ownText(before)} -> ${ownText(after)}`);
  const [were, are] = [keyed(elements(before)), keyed(elements(after))];
  for (const [key, child] of were) {
    const other = are.get(key);
    if (other === undefined) found.push(`${path}/${key}: ${child.content} -> gone`);
    else found.push(...differences(child, other, `${path}/${key}`));
  }
  for (const [key, child] of are) if (!were.has(key)) found.push(`${path}/${key}: none -> ${child.content}`);
  const kept = [...were.keys()].filter((key) => are.has(key));
  if (kept.join() !== [...are.keys()].filter((key) => were.has(key)).join()) found.push(`${path}: in another order`);
  return found;
};

const compared = ([before, after]) => {
  const [one, other] = [before, after].map((xml) => XmlDocument.fromString(xml));
  const found = differences(one.root, other.root, one.root.name);
  one.dispose();
  other.dispose();
  return found;
};

process.stdout.write(JSON.stringify(JSON.parse(await text(process.stdin)).map(compared)));
