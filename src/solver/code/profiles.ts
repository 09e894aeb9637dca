import { isProblem, type Problem, problem } from "../problem";
import { nearestSaid } from "../nearest-word";
import { wordKey } from "../word-key";
import type { CodeProfile } from "./profile";
import { ada2010 } from "./profiles/ada-2010";
import { as16572018 } from "./profiles/as-1657-2018";
import { auNcc2022Class1 } from "./profiles/au-ncc-2022-class1";
import { auNcc2022Vol1 } from "./profiles/au-ncc-2022-vol1";
import { bc2024Part9 } from "./profiles/bc-2024-part9";
import { crc2025 } from "./profiles/crc-2025";
import { din18065Dwelling } from "./profiles/din-18065-dwelling";
import { din18065General } from "./profiles/din-18065-general";
import { ibc2018 } from "./profiles/ibc-2018";
import { ibc2021 } from "./profiles/ibc-2021";
import { ibc2024 } from "./profiles/ibc-2024";
import { ieTgdK } from "./profiles/ie-tgd-k";
import { irc2018 } from "./profiles/irc-2018";
import { irc2021 } from "./profiles/irc-2021";
import { irc2024 } from "./profiles/irc-2024";
import { nbcCa2015 } from "./profiles/nbc-ca-2015";
import { nbcCa2020 } from "./profiles/nbc-ca-2020";
import { nzD1as1 } from "./profiles/nz-d1as1";
import { nzD1as1Accessible } from "./profiles/nz-d1as1-accessible";
import { nzD1as1Minor } from "./profiles/nz-d1as1-minor";
import { nzD1as1Secondary } from "./profiles/nz-d1as1-secondary";
import { obc2024Part9 } from "./profiles/obc-2024-part9";
import { obcPart9 } from "./profiles/obc-part9";
import { osha191025 } from "./profiles/osha-1910-25";
import { osha19261052 } from "./profiles/osha-1926-1052";
import { tradeRules } from "./profiles/trade-rules";
import { ukAdkGeneral } from "./profiles/uk-adk-general";
import { ukAdkPrivate } from "./profiles/uk-adk-private";
import { ukAdkUtility } from "./profiles/uk-adk-utility";

/** Every code that can be checked against, in the order users see. */
export const PROFILES: readonly CodeProfile[] = [
  irc2024,
  irc2021,
  irc2018,
  crc2025,
  ibc2024,
  ibc2021,
  ibc2018,
  osha191025,
  osha19261052,
  ada2010,
  ukAdkPrivate,
  ukAdkUtility,
  ukAdkGeneral,
  ieTgdK,
  obc2024Part9,
  obcPart9,
  nbcCa2020,
  nbcCa2015,
  bc2024Part9,
  auNcc2022Class1,
  auNcc2022Vol1,
  as16572018,
  nzD1as1,
  nzD1as1Secondary,
  nzD1as1Minor,
  nzD1as1Accessible,
  din18065Dwelling,
  din18065General,
  tradeRules,
];

interface Family {
  readonly name: string;
  readonly ids: readonly string[];
  readonly hasEditions: boolean;
}

/** Codes by what people call them, in that order: of those with editions the newest stands first. */
const FAMILIES: readonly Family[] = [...new Set(PROFILES.flatMap(({ family }) => family ?? []))].map((name) => {
  const members = PROFILES.filter(({ family }) => family === name);
  return { name, ids: members.map(({ id }) => id), hasEditions: members.every(({ isOneKind }) => isOneKind === undefined) };
});

/** A code that was found, and whether its newest edition was taken because none was named. */
export interface FoundCode {
  readonly profile: CodeProfile;
  readonly isNewest: boolean;
}

/**
 * The code of that id, matched as labels are; a name without an edition is its newest one. What is not known is answered with the nearest
 * of the same family only: a stair at work is no stair in a house.
 */
export const foundCode = (code: string): FoundCode | Problem<"unknown-code"> => {
  const key = wordKey(code);
  const ofId = (id: string): CodeProfile | undefined => PROFILES.find((profile) => profile.id === id);
  const named = PROFILES.find(({ id }) => wordKey(id) === key);
  if (named !== undefined) return { profile: named, isNewest: false };
  const family = FAMILIES.find(({ name }) => key.startsWith(wordKey(name)));
  const newest = family?.hasEditions === true && wordKey(family.name) === key ? ofId(family.ids[0] ?? "") : undefined;
  if (newest !== undefined) return { profile: newest, isNewest: true };
  const hint =
    family === undefined
      ? ""
      : wordKey(family.name) === key
        ? `; say which: ${family.ids.join(" or ")}`
        : nearestSaid(code, family.ids);
  return problem("unknown-code", { code, hint, known: PROFILES.map(({ id }) => id).join(", ") });
};

export const codeProfile = (code: string): CodeProfile | Problem<"unknown-code"> => {
  const found = foundCode(code);
  return isProblem(found) ? found : found.profile;
};
