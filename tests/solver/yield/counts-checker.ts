/** By one set of worths: what a stick of each kind holds at most, and what all pieces are worth. */
interface Law {
  readonly held: readonly number[];
  readonly needed: bigint;
}

/**
 * Whether all numbers of sticks that keep every law cost so much or more, for the checker of certificates: buys stick by stick, always of
 * the same kind as the last or of a later one, and gives up a purchase when all the money left, spent at the best rate of any later kind,
 * would still hold too little by one of the laws. Sticks for nothing are all there. Shares no code with the solver.
 */
export const areAllDear = (price: readonly bigint[], most: readonly number[], laws: readonly Law[], claimed: bigint): boolean => {
  const bought = price.flatMap((each, kind) => (each > 0n && most[kind]! > 0 ? [{ kind, price: each, most: most[kind]! }] : []));
  const lacks = laws.map(({ held, needed }) =>
    price.reduce((lack, each, kind) => (each > 0n ? lack : lack - BigInt(most[kind]!) * BigInt(held[kind]!)), needed),
  );
  const isShort = (lack: readonly bigint[], money: bigint, from: number): boolean =>
    lack.some((each, law) => bought.slice(from).every(({ kind, price: paid }) => BigInt(laws[law]!.held[kind]!) * money < each * paid));
  // a purchase keeps every law and costs less than claimed
  const isFound = (lack: readonly bigint[], money: bigint, from: number, ofThis: number): boolean => {
    if (money < 0n) return false;
    if (lack.every((each) => each <= 0n)) return true;
    const next = bought[from];
    if (next === undefined || isShort(lack, money, from)) return false;
    const withOne = lack.map((each, law) => each - BigInt(laws[law]!.held[next.kind]!));
    return (ofThis < next.most && isFound(withOne, money - next.price, from, ofThis + 1)) || isFound(lack, money, from + 1, 0);
  };
  return claimed <= 0n || !isFound(lacks, claimed - 1n, 0, 0);
};
