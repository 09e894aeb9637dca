require("./tests/bench/typescript-hook.cjs");
const { CHECK } = require("./src/functions/code/check.ts");
const { call } = require("./src/functions/call.ts");
const r=call(CHECK,[[["total rise",106.125],["risers",14],["run",10],["width",36.75]],"nbc-ca-2020"]);
for(const x of r.slice(0,9)) console.log(JSON.stringify(x));
const q=call(CHECK,[[["unit","mm"],["total rise",2700],["risers",14],["run",250],["width",900]],"irc-2021"]);
for(const x of q.slice(0,7)) console.log(JSON.stringify(x));
