const { jest } = require("../../package.json");

// No part of npm test: they need LibreOffice Calc. One office at a time.
module.exports = { ...jest, rootDir: "../..", testMatch: ["<rootDir>/tests/calc/**/*.calc.ts"], maxWorkers: 1, testTimeout: 1_200_000 };
