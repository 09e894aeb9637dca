import type { SheetLaw } from "../../../../src/solver/yield/sheets/sheet-proof";
import type { CertificatePart } from "./certificate-job";
import type { Count } from "./held-worth";

/** Numbers of each kind of sheet, and what they cost. */
export interface Choice {
  readonly counts: readonly number[];
  readonly price: number;
}

const total = ({ panels }: CertificatePart, { worth }: SheetLaw): number =>
  panels.reduce((sum, { wanted }, kind) => sum + wanted * worth[kind]!, 0);

/** The least that sheets of these kinds cost, the last one in part, that hold so much by a law; Infinity where they never do. */
const leastPrice = ({ sheets }: CertificatePart, byRate: readonly number[], { holds }: SheetLaw, lack: number): number => {
  let left = lack;
  let price = 0;
  for (const sheet of byRate) {
    if (left <= 0) return price;
    const share = Math.min(sheets[sheet]!.available, left / holds[sheet]!);
    price += share * sheets[sheet]!.price;
    left -= share * holds[sheet]!;
  }
  return left > 1e-6 ? Infinity : price;
};

/**
 * The cheapest numbers of sheets, below a price, that keep every law and lie within none that was shown too small by a search: undefined
 * where there are none. No more sheets than pieces are of use. The count is spent by one for each law and each kind at each step.
 */
export const cheaperSheets = (
  part: CertificatePart, laws: readonly SheetLaw[], tooSmall: readonly (readonly number[])[], below: number, count: Count,
): Choice | undefined => {
  const { sheets, pieces } = part;
  const order = [...sheets.keys()].sort((one, other) => sheets[other]!.price - sheets[one]!.price || one - other);
  const rate = ({ holds }: SheetLaw, sheet: number): number => sheets[sheet]!.price / holds[sheet]!;
  /** For each place of the order and each law the kinds from there on that hold something, the cheapest worth first. */
  const byRates = order.map((_, from) => laws.map((law) =>
    order.slice(from).filter((sheet) => law.holds[sheet]! > 0).sort((one, other) => rate(law, one) - rate(law, other))));
  const counts = sheets.map(() => 0);
  let best: Choice | undefined;
  const isOpen = (lack: readonly number[]): boolean =>
    lack.every((each) => each <= 0) && !tooSmall.some((other) => counts.every((each, sheet) => each <= other[sheet]!));
  const visit = (place: number, price: number, lack: readonly number[], left: number): void => {
    count.left -= (laws.length + tooSmall.length) * sheets.length + 1;
    const limit = best?.price ?? below;
    if (count.left <= 0 || price >= limit) return;
    if (isOpen(lack)) {
      best = { counts: [...counts], price };
      return;
    }
    const sheet = order[place];
    if (sheet === undefined) return;
    if (laws.some((law, at) => Math.ceil(price + leastPrice(part, byRates[place]![at]!, law, lack[at]!) * (1 - 1e-12)) >= limit)) return;
    for (let taken = 0; taken <= Math.min(left, sheets[sheet]!.available); taken += 1) {
      counts[sheet] = taken;
      visit(place + 1, price + taken * sheets[sheet]!.price, lack.map((each, at) => each - taken * laws[at]!.holds[sheet]!), left - taken);
    }
    counts[sheet] = 0;
  };
  visit(0, 0, laws.map((law) => total(part, law)), pieces);
  return best;
};
