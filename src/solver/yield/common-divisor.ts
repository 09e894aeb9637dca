/** The greatest whole number that divides both; the other where one is 0. */
export const commonDivisor = (one: number, other: number): number => (other === 0 ? one : commonDivisor(other, one % other));
