import { policyOf } from "./headers";

const OWN_MACHINE = /\blocalhost\b|\b127[.]0[.]0[.]1\b/;
// The one asks whether it runs on its own machine; in the other the sheet engine tells a link typed in a cell from text.
const MAY_NAME_IT = /^(on-site|web)[.]([0-9a-f]{16}[.])?js$/;
const WITH_TEXT = /[.](html|js|json|css|xml|md|txt)$/;

/** Why a folder must not go to a host. */
export const faults = (files: ReadonlyMap<string, Buffer>): readonly string[] =>
  [...files].flatMap(([name, content]) => {
    const text = WITH_TEXT.test(name) ? content.toString("utf8") : "";
    const own = MAY_NAME_IT.test(name) ? undefined : OWN_MACHINE.exec(text)?.[0];
    return [
      ...(own === undefined ? [] : [`${name} names ${own}, which is another machine for everyone who opens it.`]),
      ...(name.endsWith(".html") && policyOf(text) === undefined ? [`${name} has no Content-Security-Policy.`] : []),
    ];
  });
