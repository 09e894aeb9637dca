import type { BoardProof, Division, ProofPlace, ProofWorths, SetProof } from "../../../../src/solver/yield/ripped/board-proof";
import type { RippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { type CertificateJob, certificateJob } from "./certificate-job";
import { cheaperBoards } from "./cheaper-boards";
import { type Count, heldWorth, turned } from "./held-worth";
import { leastWidth } from "./least-width";
import { areAllListed } from "./listed-divisions";
import type { PlainJob } from "./plain-job";

/** A place holds at least, or at most, so many of some kinds. */
interface Limit {
  readonly place: ProofPlace;
  readonly kinds: readonly number[];
  readonly isLeast: boolean;
  readonly count: number;
}

/** A case of a refutation: how stretches are divided in it, its limits, and its worths. */
interface Leaf {
  readonly divided: ReadonlyMap<string, readonly Division[]>;
  readonly limits: readonly Limit[];
  readonly worths: ProofWorths;
}

type Terms = Omit<Leaf, "worths">;

/** Steps of a check, of states of tables and of sets looked at: a few seconds. Beyond it nothing is certified. */
const MOST_STEPS = 2_000_000_000;

const keyOf = ({ board, stretch }: ProofPlace): string => `${board}/${stretch}`;
const divisionKey = ({ first, into }: Division): string => `${first} ${typeof into === "string" ? into : into.join()}`;

/** A check under way. */
interface Check {
  readonly job: CertificateJob;
  readonly proof: BoardProof;
  readonly faults: string[];
  readonly count: Count;
}

const allowedAt = ({ proof }: Check, { divided }: Terms, place: ProofPlace): readonly Division[] =>
  divided.get(keyOf(place)) ?? proof.divisions[place.board]?.[place.stretch] ?? [];

/** The strips of a stretch where it is divided in one way into listed ones, else itself. */
const placesAt = (check: Check, terms: Terms, board: number, stretch: number): ProofPlace[] => {
  const allowed = allowedAt(check, terms, { board, stretch, strip: -1 });
  const into = allowed.length === 1 ? allowed[0]!.into : "led";
  return typeof into === "string" ? [{ board, stretch, strip: -1 }] : into.map((_, strip) => ({ board, stretch, strip }));
};

const isThere = (check: Check, terms: Terms, { board, stretch, strip }: ProofPlace): boolean =>
  check.job.boards[board]?.stretches[stretch] !== undefined &&
  placesAt(check, terms, board, stretch).some((place) => place.strip === strip);

const packingFault = (check: Check, terms: Terms, { place, fewer }: Extract<SetProof, { by: "packing" }>): boolean => {
  const { job, count } = check;
  const allowed = allowedAt(check, terms, place);
  if (allowed.length !== 1 || allowed[0]!.into !== "led" || !isThere(check, terms, place)) return true;
  const counts = job.kinds.map((_, kind) => fewer.reduce((sum, each) => (each.kind === kind ? sum + each.than : sum), 0));
  if (new Set(fewer.map(({ kind }) => kind)).size !== fewer.length) return true;
  const { wide } = turned(job, place.board, place.stretch, allowed[0]!.first);
  return leastWidth(job, place, allowed[0]!.first, counts, count) <= wide;
};

/** The cases that a refutation comes down to; what is wrong with how it is split goes among the faults. */
const leavesOf = (check: Check, proof: SetProof, terms: Terms): readonly Leaf[] => {
  const { faults } = check;
  if (proof.by === "worth") return [{ ...terms, worths: proof }];
  if (proof.by === "division") {
    const listed = proof.parts.flatMap(({ divisions }) => divisions.map(divisionKey));
    const allowed = allowedAt(check, terms, proof.place).map(divisionKey);
    if (!allowed.every((each) => listed.includes(each))) faults.push("a refutation leaves out a way to divide a stretch");
    return proof.parts.flatMap((part) =>
      leavesOf(check, part.proof, { ...terms, divided: new Map([...terms.divided, [keyOf(proof.place), part.divisions]]) }));
  }
  const withLimits = (part: SetProof, limits: readonly Limit[]): readonly Leaf[] =>
    leavesOf(check, part, { ...terms, limits: [...terms.limits, ...limits] });
  const { place } = proof;
  if (proof.by === "count") {
    const { kinds, atMost } = proof;
    if (!isThere(check, terms, place)) faults.push("a refutation splits a place that is not there");
    return [
      ...withLimits(proof.upTo, [{ place, kinds, isLeast: false, count: atMost }]),
      ...withLimits(proof.over, [{ place, kinds, isLeast: true, count: atMost + 1 }]),
    ];
  }
  if (packingFault(check, terms, proof)) faults.push("pieces said to find no room together do find it");
  return proof.fewer.flatMap(({ kind, than, proof: part }, at) => withLimits(part, [
    ...proof.fewer.slice(0, at).map((before): Limit => ({ place, kinds: [before.kind], isLeast: true, count: before.than })),
    { place, kinds: [kind], isLeast: false, count: than - 1 },
  ]));
};

/** What a board holds at most in a case, its limits counted in, by the checker's own tables. */
const holdsOf = (check: Check, leaf: Leaf, board: number): number => {
  const { job, count } = check;
  const { worth, limitWorth } = leaf.worths;
  const placed = (place: ProofPlace): number => {
    const own = [...worth];
    let taken = 0;
    for (const [at, limit] of leaf.limits.entries()) {
      if (keyOf(limit.place) !== keyOf(place) || limit.place.strip !== place.strip) continue;
      for (const kind of limit.kinds) own[kind]! += limitWorth[at]!;
      taken += limitWorth[at]! * limit.count;
    }
    return heldWorth(job, place, allowedAt(check, leaf, place), own, count) - taken;
  };
  return job.boards[board]!.stretches.reduce((all, _, stretch) => {
    const whole = { board, stretch, strip: -1 };
    const byPlace = placesAt(check, leaf, board, stretch).reduce((sum, place) => sum + placed(place), 0);
    // without limits the strips together hold no more than as one
    const isLimited = leaf.limits.some(({ place }) => keyOf(place) === keyOf(whole));
    return all + (isLimited ? byPlace : Math.min(byPlace, placed(whole)));
  }, 0);
};

const worthsFault = ({ job }: Check, { limits, worths: { worth, limitWorth, holds } }: Leaf): boolean =>
  worth.length !== job.kinds.length || limitWorth.length !== limits.length || holds.length !== job.boards.length ||
  ![...worth, ...limitWorth, ...holds].every(Number.isInteger) ||
  limits.some(({ isLeast, kinds }, at) => (isLeast ? limitWorth[at]! < 0 : limitWorth[at]! > 0) || new Set(kinds).size !== kinds.length);

const neededBy = ({ kinds }: CertificateJob, { worth }: ProofWorths): number =>
  kinds.reduce((sum, { wanted }, kind) => sum + wanted * worth[kind]!, 0);

/** Whether a set of boards is too small in each case; what a board is said to hold is reckoned again where it tells. */
const tooSmallBy = (check: Check, leaves: readonly Leaf[]): ((has: readonly boolean[]) => boolean) => {
  const known = leaves.map(() => new Map<number, boolean>());
  const isSound = (at: number, board: number): boolean => {
    const before = known[at]!.get(board);
    if (before !== undefined) return before;
    const holds = holdsOf(check, leaves[at]!, board) <= leaves[at]!.worths.holds[board]!;
    known[at]!.set(board, holds);
    if (!holds) check.faults.push(`board ${board + 1} can hold more worth than a refutation says`);
    return holds;
  };
  return (has) => leaves.every(({ limits, worths }, at) => {
    if (limits.some(({ isLeast, count, place }) => isLeast && count > 0 && !has[place.board]!)) return true;
    const set = has.flatMap((isIn, board) => (isIn ? [board] : []));
    const held = set.reduce((sum, board) => sum + worths.holds[board]!, 0);
    return held < neededBy(check.job, worths) && set.every((board) => isSound(at, board));
  });
};

const divisionFaults = ({ job, proof }: Check): string[] =>
  job.boards.flatMap(({ stretches }, board) => stretches.flatMap((_, stretch) => {
    const listed = proof.divisions[board]?.[stretch] ?? [];
    const isWhole = job.ways.every((way) => areAllListed(job, { board, stretch, strip: -1 }, way, listed));
    return isWhole ? [] : [`board ${board + 1}: a way to divide stretch ${stretch + 1} is not listed`];
  }));

/** What is wrong with the proof that no choice of boards costs less than so many cents. */
const proofFaults = (job: PlainJob, proof: BoardProof, claimed: number): string[] => {
  const checked = certificateJob(job, proof.pieceRows);
  if (typeof checked === "string") return [checked];
  const check: Check = { job: checked, proof, faults: [], count: { left: MOST_STEPS } };
  check.faults.push(...divisionFaults(check));
  const all = proof.refutations.map((each) => leavesOf(check, each, { divided: new Map(), limits: [] }));
  if (all.flat().some((leaf) => worthsFault(check, leaf)))
    check.faults.push("worths are not whole numbers for all pieces, limits and boards");
  if (check.faults.length > 0) return check.faults;
  const single = all.flatMap((leaves) => (leaves.length === 1 && leaves[0]!.limits.length === 0 ? leaves : []));
  for (const leaf of single) {
    for (const board of checked.boards.keys())
      if (holdsOf(check, leaf, board) > leaf.worths.holds[board]!) check.faults.push(`board ${board + 1} can hold more worth than is said`);
  }
  const searched = all.filter((leaves) => !single.includes(leaves[0]!)).map((leaves) => tooSmallBy(check, leaves));
  const laws = single.map(({ worths }) => ({ holds: worths.holds, needed: neededBy(checked, worths) }));
  const cheaper = cheaperBoards(checked, laws, (has) => searched.some((isTooSmall) => isTooSmall(has)), claimed, check.count);
  if (cheaper !== undefined) check.faults.push(`boards ${cheaper.map((board) => board + 1).join()} cost less and are not shown too small`);
  if (check.count.left <= 0) check.faults.push("the check takes too much work");
  return check.faults;
};

/** Everything a plan claims and its proof does not prove, in words; nothing for a sound plan. */
export const unproven = (job: PlainJob, { proof, bound, cost, verdict }: RippingPlan): string[] => {
  const isCertified = verdict === "best possible (proven)";
  if (isCertified && !bound.eq(cost)) return ["called certified, but the bound is not the cost"];
  if (proof === undefined) return isCertified ? ["called certified, but there is no proof"] : [];
  return proofFaults(job, proof, bound.times(100).toNumber());
};
