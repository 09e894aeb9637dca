// Asked before anything is built: what follows `npm run build --`.
const example = "npm run build -- --origin https://example.org/stairs";

// https://www.rfc-editor.org/rfc/rfc3986#section-2: what an address is written with; the rest would have to be escaped.
const notInAddresses = /[^A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=%]/;
const thisMachine = /^(localhost|.*[.]localhost|127[.].*|0[.]0[.]0[.]0|\[::1?\])$/;
// The longest name in the folder, with room to spare, below the 2048 characters a manifest allows an address ([MS-OWEMXML], ST_URL).
const mostCharacters = 1900;

const refusal = (given, why) => ({ refused: `${given === undefined ? "--origin" : `"${given}"`} ${why}, as in ${example}` });

const hostAddress = (given) => {
  if (given === undefined || given === "" || given.startsWith("--"))
    return refusal(undefined, "needs the address that the folder will have on its host");
  if (/^http:/i.test(given))
    return refusal(given, "is not https, and Excel opens add-ins over https only. Give an address that begins with https://");
  if (!/^https:\/\/[^/]/i.test(given)) return refusal(given, "is not a whole address. Give it from https:// on");
  if (notInAddresses.test(given))
    return refusal(
      given,
      `has a character that no address has: ${JSON.stringify(notInAddresses.exec(given)[0])}. Give the address as a browser ` +
        `shows it when it is copied`,
    );
  if (!URL.canParse(given)) return refusal(given, "cannot be read as an address. Give https://, the name of the host and the folder");
  const { protocol, username, password, hostname, host, pathname, search, hash } = new URL(given);
  if (username !== "" || password !== "")
    return refusal(given, "has a user's name in it, which everyone would read in the manifest. Give the address without it");
  if (given.includes("?") || given.includes("#") || search !== "" || hash !== "")
    return refusal(given, "goes on after the folder. Give the address up to ? or #");
  if (thisMachine.test(hostname))
    return refusal(given, "is this machine alone, where npm run excel serves the add-in. Give the address of a host that others reach");
  if (/[.][a-z]{1,5}$/i.test(pathname)) return refusal(given, "names a file. Give the address of the folder it is in");
  const address = `${protocol}//${host}${pathname.replace(/\/+$/, "")}`;
  return address.length > mostCharacters
    ? refusal(
        `${given.slice(0, 60)} …`,
        `has ${address.length} characters, and a manifest has room for ${mostCharacters}. Give a shorter address`,
      )
    : { address };
};

/**
 * The address to build for, or that only what the page of `npm start` or the ready workbooks need is built, nothing where neither is asked
 * for, or a sentence that says what is wrong with what was given.
 */
const buildArguments = (args) => {
  if (args.length === 0) return {};
  const [first, ...rest] = args;
  if (["--page", "--workbooks"].includes(first) && rest.length === 0) return { only: first.slice(2) };
  const [name, ...inOne] = first.split("=");
  if (name !== "--origin") return { refused: `"${first}" is not known to npm run build, which takes --origin alone, as in ${example}` };
  const [value, ...more] = first.includes("=") ? [inOne.join("="), ...rest] : rest;
  if (more.length > 0) return { refused: `"${more.join(" ")}" is too much: npm run build takes one address, as in ${example}` };
  return hostAddress(value);
};

module.exports = { buildArguments };
