import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request, type IncomingHttpHeaders, type Server } from "node:http";
import { connect, type Socket } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { gunzipSync } from "node:zlib";
import { listeningPort } from "../../src/serve/listening-port";
import { loopbackServer } from "../../src/serve/loopback-server";

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
  readonly bytes: Buffer;
}

const LONG = "let risers = 14;\n".repeat(1000);

let outside: string;
let server: Server;
let port: number;

const ask = (
  target: string,
  { method = "GET", host = `localhost:${port}`, ...headers }: Readonly<Record<string, string>> = {},
): Promise<Answer> =>
  new Promise((resolve, reject) => {
    request({ host: "127.0.0.1", port, path: target, method, headers: { ...headers, Host: host } }, (response) => {
      const parts: Buffer[] = [];
      response
        .on("data", (part: Buffer) => parts.push(part))
        .on("end", () => {
          const bytes = Buffer.concat(parts);
          resolve({ status: response.statusCode, headers: response.headers, body: bytes.toString("utf8"), bytes });
        });
    })
      .on("error", reject)
      .end();
  });

beforeAll(async () => {
  outside = mkdtempSync(path.join(tmpdir(), "treadsheet-serve-"));
  const folder = path.join(outside, "dist");
  mkdirSync(path.join(folder, "assets"), { recursive: true });
  mkdirSync(path.join(folder, "tools"));
  writeFileSync(path.join(folder, "tools", "serve.js"), "secret");
  writeFileSync(path.join(folder, "web.js"), LONG);
  mkdirSync(path.join(outside, "dist-next-door"));
  writeFileSync(path.join(outside, "secret.txt"), "secret");
  writeFileSync(path.join(outside, "dist-next-door", "secret.txt"), "secret");
  writeFileSync(path.join(folder, "index.html"), "<!doctype html>home");
  writeFileSync(path.join(folder, "reference.html"), "<!doctype html>reference");
  writeFileSync(path.join(folder, "taskpane.html"), "<!doctype html>pane");
  writeFileSync(path.join(folder, "functions.js"), "0;");
  writeFileSync(path.join(folder, "functions.json"), "{}");
  writeFileSync(path.join(folder, ".hidden"), "secret");
  writeFileSync(path.join(folder, "assets", "icon-16.png"), "png");
  symlinkSync(path.join(outside, "secret.txt"), path.join(folder, "link.txt"));
  symlinkSync(outside, path.join(folder, "linked"));
  server = loopbackServer(folder);
  port = await listeningPort(server, 0);
});

afterAll(async () => {
  await new Promise((resolve) => server.close(resolve));
  rmSync(outside, { recursive: true });
});

test("the address without a name shows the first page", async () => {
  expect(await ask("/")).toMatchObject({ status: 200, body: "<!doctype html>home" });
});

test.each([
  ["/index.html", "text/html; charset=utf-8"],
  ["/functions.js", "text/javascript; charset=utf-8"],
  ["/functions.json?v=2", "application/json; charset=utf-8"],
  ["/assets/icon-16.png", "image/png"],
])("%s is handed out as %s", async (target, type) => {
  const { status, headers } = await ask(target);
  expect({ status, type: headers["content-type"], sniff: headers["x-content-type-options"] }).toEqual({
    status: 200,
    type,
    sniff: "nosniff",
  });
});

test("pages without the sheet keep to styles and pictures of files", async () => {
  const { headers } = await ask("/reference.html");
  expect(headers["content-security-policy"]).toBe(
    "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self'; base-uri 'none'; form-action " +
      "'none'; frame-ancestors 'none'",
  );
});

test("the sheet's page may load nothing from anywhere else, and no page may frame it", async () => {
  const { headers } = await ask("/index.html");
  expect(headers["content-security-policy"]).toBe(
    "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; connect-src 'self'; img-src 'self' data:; base-uri " +
      "'none'; form-action 'none'; frame-ancestors 'none'",
  );
});

test("the pane is left to its own policy, because Excel frames it", async () => {
  const { status, headers } = await ask("/taskpane.html");
  expect(status).toBe(200);
  expect(headers["content-security-policy"]).toBeUndefined();
});

test("pages are asked for anew each time, icons may be kept", async () => {
  expect((await ask("/functions.js")).headers["cache-control"]).toBe("no-cache");
  expect((await ask("/assets/icon-16.png")).headers["cache-control"]).toBe("max-age=3600");
});

test.each(["localhost", "LOCALHOST:3000", "127.0.0.1", "127.0.0.1:3000", "[::1]", "[::1]:3000"])(
  "a request for %s is answered",
  async (host) => {
    expect((await ask("/", { host })).status).toBe(200);
  },
);

test.each(["example.com", "example.com:3000", "localhost.example.com", "127.0.0.1.example.com", "192.168.1.10", "0.0.0.0", "localhost:x"])(
  "a request for another name, %p, is refused",
  async (host) => {
    const { status, body } = await ask("/", { host });
    expect(status).toBe(403);
    expect(body).not.toContain("home");
  },
);

test("a request that names no host is refused", async () => {
  const answer = await new Promise<string>((resolve, reject) => {
    let text = "";
    connect(port, "127.0.0.1", function (this: Socket) {
      this.end("GET / HTTP/1.0\r\n\r\n");
    })
      .setEncoding("utf8")
      .on("data", (part: string) => (text += part))
      .on("end", () => resolve(text))
      .on("error", reject);
  });
  expect(answer).toMatch(/^HTTP\/1.1 403 /);
  expect(answer).not.toContain("home");
});

test.each(["POST", "PUT", "DELETE", "OPTIONS"])("%s is refused", async (method) => {
  const { status, headers } = await ask("/", { method });
  expect({ status, allow: headers.allow }).toEqual({ status: 405, allow: "GET, HEAD" });
});

test("HEAD tells the size and sends nothing", async () => {
  const { status, headers, body } = await ask("/functions.json", { method: "HEAD" });
  expect({ status, length: headers["content-length"], body }).toEqual({ status: 200, length: "2", body: "" });
});

test.each([
  "/../secret.txt",
  "/assets/../../secret.txt",
  "/%2e%2e/secret.txt",
  "/..%2fsecret.txt",
  "/%2e%2e%2fsecret.txt",
  "/%252e%252e/secret.txt",
  "/..%5csecret.txt",
  "/../dist-next-door/secret.txt",
  "/link.txt",
  "/linked/secret.txt",
  "/.hidden",
  "/secret.txt%00.html",
  "/%zz",
  "//secret.txt",
  "//tools/serve.js",
  "///tools%2fserve.js",
  "/tools./serve.js",
  "/tools%20/serve.js",
  "/assets//icon-16.png",
  "http://localhost/secret.txt",
])("%s does not lead out of the folder", async (target) => {
  const { status, body } = await ask(target);
  expect([400, 404]).toContain(status);
  expect(body).not.toContain("secret");
});

test.each(["/tools/serve.js", "/TOOLS/serve.js", "/tools/", "/nothing.html", "/assets", "/assets/"])("%s is not there", async (target) => {
  expect((await ask(target)).status).toBe(404);
});

test("a long text goes packed to whoever takes gzip, and is the same text", async () => {
  const packed = await ask("/web.js", { "Accept-Encoding": "gzip, deflate, br" });
  expect(packed.headers).toMatchObject({
    "content-encoding": "gzip",
    "content-length": String(packed.bytes.length),
    vary: "Accept-Encoding",
  });
  expect(packed.bytes.length).toBeLessThan(LONG.length / 10);
  expect(gunzipSync(packed.bytes).toString("utf8")).toBe(LONG);
});

test.each([undefined, "identity", "br", "gzip;q=0", "gzip; q=0.0"])("who takes %p gets the text as it stands", async (encoding) => {
  const { headers, body } = await ask("/web.js", encoding === undefined ? {} : { "Accept-Encoding": encoding });
  expect(headers["content-encoding"]).toBeUndefined();
  expect(body).toBe(LONG);
});

test("short texts and pictures are not packed", async () => {
  for (const target of ["/functions.js", "/assets/icon-16.png"]) {
    expect((await ask(target, { "Accept-Encoding": "gzip" })).headers["content-encoding"]).toBeUndefined();
  }
});

// RFC 9110, 8.8.3 and 13.1.2: one validator for each form of a file, and 304 without a body where the browser names the one that stands.
test("what the browser has kept is not sent again until the file is another", async () => {
  const asks = (validator?: string) =>
    ask("/web.js", { "Accept-Encoding": "gzip", ...(validator === undefined ? {} : { "If-None-Match": validator }) });
  const first = await asks();
  const validator = String(first.headers.etag);
  expect(await asks(validator)).toMatchObject({ status: 304, body: "", headers: { etag: validator } });
  expect(await asks(`"other", W/${validator}`)).toMatchObject({ status: 304 });
  expect(await asks('"other"')).toMatchObject({ status: 200 });
  expect((await ask("/web.js")).headers.etag).not.toBe(validator);
  writeFileSync(path.join(outside, "dist", "web.js"), `${LONG}risers = 15;`);
  const second = await asks(validator);
  expect(second).toMatchObject({ status: 200 });
  expect(gunzipSync(second.bytes).toString("utf8")).toBe(`${LONG}risers = 15;`);
  writeFileSync(path.join(outside, "dist", "web.js"), LONG);
});
