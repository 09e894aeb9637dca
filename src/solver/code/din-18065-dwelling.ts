import { centimetres, limitRow } from "./limit-row";
import type { CodeProfile, Limit, Source } from "./profile";

const DIN_BR: Source = {
  title: "Building law article, outdoor stairs",
  address: "https://baurechtsuche.de/fachartikel/treppen-im-aussenbereich/",
};
const DIN_HJ: Source = { title: "House journal, depth of treads", address: "https://www.hausjournal.net/treppenstufen-tiefe" };
const DIN_STEP: Source = {
  title: "Glossary, step measure rule",
  address: "https://www.treppenlifter.me/glossar/treppenlifte/treppenstufen-schrittmassregel.html",
};
const DIN_TEK: Source = { title: "Architects' forum on DIN 18065", address: "https://tektorum.de/6681-post30.html" };
const DIN_WDR: Source = {
  title: "Broadcaster's page on stairs that keep no standard",
  address: "https://www1.wdr.de/nachrichten/tiktok-video-weil-die-treppe-ist-nicht-genormt-100.html",
};

const limit = limitRow({ unit: "cm", status: "seen for another edition", sources: [DIN_TEK] });

const LIMITS: readonly Limit[] = [
  limit({
    item: "riser height", clause: "DIN 18065 (clause not seen)", text: "20",
    measured: "plumb, tread to tread",
    rule: { comparator: "max", of: "riserHeight", max: centimetres("20") },
    remark: "a least riser of 14 cm is from memory and not held",
  }),
  limit({
    item: "tread depth", clause: "DIN 18065 (clause not seen)", text: "23 to 37",
    measured: "level, nosing to nosing, without what lies under the nosing",
    rule: { comparator: "range", of: "treadDepth", min: centimetres("23"), max: centimetres("37") },
    exceptions: [{
      when: { fact: "egress", is: ["no"], otherwise: "yes" },
      words: "a stair that is not a necessary one: 21 to 37 cm",
      then: { comparator: "range", of: "treadDepth", min: centimetres("21"), max: centimetres("37") },
    }],
    sources: [DIN_TEK, DIN_HJ],
  }),
  limit({
    item: "stair width", clause: "DIN 18065 (clause not seen)", text: "80",
    measured: "usable width",
    rule: { comparator: "min", of: ["clearWidth", "width"], min: centimetres("80") },
  }),
  limit({
    item: "headroom", clause: "DIN 18065 (clause not seen)", text: "200",
    measured: "plumb clearance",
    rule: { comparator: "min", of: "headroom", min: centimetres("200") },
    sources: [DIN_TEK, DIN_WDR],
  }),
  limit({
    item: "first riser deviation", clause: "DIN 18065 (clause not seen)", text: "1.5",
    measured: "bottom riser as built against the riser as designed",
    rule: { comparator: "uniformity", of: "rise", within: "bottom step", tolerance: centimetres("1.5") },
    status: "seen", sources: [DIN_BR],
  }),
  limit({
    item: "two r plus g", clause: "DIN 18065 (clause not seen)", text: "59 to 65",
    measured: "twice the riser plus the tread",
    rule: { comparator: "range", of: { formula: "two risers plus run" }, min: centimetres("59"), max: centimetres("65") },
    advisory: true,
    sources: [DIN_STEP, DIN_TEK],
    remark: "the step measure; 18 on 27 cm is the ideal",
  }),
];

/** Stairs of houses with up to two dwellings: DIN 18065. */
export const din18065Dwelling: CodeProfile = {
  id: "din-18065-dwelling",
  title: "DIN 18065, stairs in buildings with up to two dwellings",
  edition: "2011-06 and 2015",
  region: "Germany",
  limits: LIMITS,
  outOfScope: [],
};
