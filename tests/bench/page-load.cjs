const { spawn } = require("node:child_process");
const path = require("node:path");
const { startedBrowser } = require("../browser/chromium.ts");

const rounds = 3;
const megabit = 1e6 / 8;

/** Conditions of a first load: what Chromium is made to wait for, by its own protocol (Network.emulateNetworkConditions, Emulation). */
const CONDITIONS = [
  ["loopback", {}],
  ["10 Mbit/s, 20 ms away", { network: { offline: false, latency: 20, downloadThroughput: 10 * megabit, uploadThroughput: 10 * megabit } }],
  ["processor slowed 4 times", { slower: 4 }],
];

const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(1)} s`;
const middle = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

/** A build with the server that was built beside it. */
const served = (dist) =>
  new Promise((resolve, reject) => {
    const server = spawn(process.execPath, [path.join(dist, "tools/serve.js")], {
      env: { ...process.env, PORT: "0", TREADSHEET_NO_BROWSER: "1" },
    });
    let says = "";
    server.stdout.setEncoding("utf8").on("data", (text) => {
      says += text;
      const address = /https?:\/\/\S+/.exec(says)?.[0];
      if (address !== undefined) resolve({ address, stop: () => server.kill() });
    });
    server.on("error", reject).on("exit", (code) => reject(new Error(`The server of ${dist} ended with code ${code}.`)));
  });

const load = async (browser, address, { network, slower }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const protocol = await context.newCDPSession(page);
  let bytes = 0;
  await protocol.send("Network.enable");
  protocol.on("Network.loadingFinished", ({ encodedDataLength }) => (bytes += encodedDataLength));
  if (network !== undefined) await protocol.send("Network.emulateNetworkConditions", network);
  if (slower !== undefined) await protocol.send("Emulation.setCPUThrottlingRate", { rate: slower });
  const until = async (work) => {
    const began = performance.now();
    bytes = 0;
    await work();
    await page.waitForSelector("html[data-ready=yes]", { timeout: 0 });
    return { took: performance.now() - began, bytes };
  };
  const first = await until(() => page.goto(address));
  const again = await until(() => page.reload());
  await context.close();
  return { first, again };
};

/** First load and reload of each built folder, the folders taking turns. */
const pageLoadRows = async (folders) => {
  const browser = await startedBrowser();
  const servers = await Promise.all(folders.map(served));
  const rows = [];
  try {
    for (const [name, condition] of CONDITIONS) {
      const loads = folders.map(() => []);
      for (let round = 0; round < rounds; round += 1) {
        for (const [place, { address }] of servers.entries()) loads[place].push(await load(browser, address, condition));
      }
      for (const [place, folder] of folders.entries()) {
        const of = (part, figure) => middle(loads[place].map((one) => one[part][figure]));
        rows.push([
          `${name}: ${path.relative(process.cwd(), folder) || "."}`,
          seconds(of("first", "took")),
          `${(of("first", "bytes") / 1e6).toFixed(2)} MB`,
          seconds(of("again", "took")),
          `${(of("again", "bytes") / 1e6).toFixed(2)} MB`,
        ]);
      }
    }
  } finally {
    for (const { stop } of servers) stop();
    await browser.close();
  }
  return [["until the sheet is ready (median of " + rounds + ")", "first", "sent", "reload", "sent"], ...rows];
};

module.exports = { pageLoadRows };
