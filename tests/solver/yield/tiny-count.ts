/** Tiny jobs compared with every plan there is: some hundreds in `npm test`, as many as the bench asks for there. */
const FEW = 300;

export const TINY_COUNT = Number(process.env["TREADSHEET_TINY_JOBS"] ?? FEW);
