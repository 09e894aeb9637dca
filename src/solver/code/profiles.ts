import { type Problem, problem } from "../problem";
import { ada2010 } from "./ada-2010";
import { auNcc2022Class1 } from "./au-ncc-2022-class1";
import { din18065Dwelling } from "./din-18065-dwelling";
import { din18065General } from "./din-18065-general";
import { ibc2018 } from "./ibc-2018";
import { ibc2021 } from "./ibc-2021";
import { irc2018 } from "./irc-2018";
import { irc2021 } from "./irc-2021";
import { irc2024 } from "./irc-2024";
import { labelKey } from "./label-key";
import { nbcCa2015 } from "./nbc-ca-2015";
import { nbcCa2020 } from "./nbc-ca-2020";
import { nearestLabel } from "./nearest-label";
import { obc2024Part9 } from "./obc-2024-part9";
import { obcPart9 } from "./obc-part9";
import { osha191025 } from "./osha-1910-25";
import { osha19261052 } from "./osha-1926-1052";
import type { CodeProfile } from "./profile";
import { tradeRules } from "./trade-rules";
import { ukAdkGeneral } from "./uk-adk-general";
import { ukAdkPrivate } from "./uk-adk-private";
import { ukAdkUtility } from "./uk-adk-utility";

/** Every code that can be checked against, in the order users see. */
export const PROFILES: readonly CodeProfile[] = [
  irc2024, irc2021, irc2018, ibc2021, ibc2018, osha191025, osha19261052, ada2010,
  ukAdkPrivate, ukAdkUtility, ukAdkGeneral, obc2024Part9, obcPart9, nbcCa2020, nbcCa2015, auNcc2022Class1,
  din18065Dwelling, din18065General, tradeRules,
];

/** The code of that id, matched as labels are; `known` lists the ids there are. */
export const codeProfile = (code: string): CodeProfile | Problem<"unknown-code"> => {
  const ids = PROFILES.map(({ id }) => id);
  return (
    PROFILES.find(({ id }) => labelKey(id) === labelKey(code)) ??
    problem("unknown-code", { code, nearest: nearestLabel(code, ids), known: ids.join(", ") })
  );
};
