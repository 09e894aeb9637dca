// Asked first by `npm run excel`, before anything is installed or built.
const supported = ["win32", "darwin"];

const whyNoExcel = (platform) =>
  supported.includes(platform)
    ? undefined
    : "Excel for the desktop runs on Windows and Mac only, so the add-in cannot be opened in Excel from here. `npm start` opens " +
      "Treadsheet in a browser instead.";

if (require.main === module) {
  const why = whyNoExcel(process.platform);
  if (why !== undefined) {
    console.error(why);
    process.exitCode = 1;
  }
}
module.exports = { whyNoExcel };
