import { modelInWork } from "../model-in-work";
import type { WholeModel } from "../whole-model";
import type { TinyGlueUp } from "./every-glue-up";

/**
 * Each board is cut into so many sections as it holds of the shortest length, each of one length or none. Of each section so many strips
 * go into each panel, and so much net width with them; strips of a section in one panel may share it in any way between least and greatest.
 */
export const glueModel = ({ panels, boards, kerf, joints, least, greatest, strips, isOfOneBoard }: TinyGlueUp): WholeModel => {
  const { model, row, column, inTurn } = modelInWork();
  const lengths = [...new Set(panels.map(({ length }) => length))];
  const needs = panels.map(({ need }) => row(need, Infinity));
  const counts = panels.map(() => row(-Infinity, strips));
  const alone = panels.map(() => row(-Infinity, isOfOneBoard ? 1 : boards.length));
  for (const { length, width, price } of boards) {
    const holds = row(-Infinity, 0);
    column(price, 1, [[holds, -(length + kerf)]]);
    const most = Math.floor((width + kerf) / (least + joints + kerf));
    // which panels have strips of this board
    const shared = panels.map((_, panel) => {
      const of = row(-Infinity, 0);
      column(0, 1, [[alone[panel]!, 1], [of, -boards.length * most * length]]);
      return of;
    });
    const sections = Math.floor((length + kerf) / (Math.min(...lengths) + kerf));
    for (const turn of inTurn(sections)) {
      const once = row(-Infinity, 1);
      const across = row(-Infinity, 0);
      const longEnough = panels.map(() => row(-Infinity, 0));
      for (const each of lengths)
        column(0, 1, [
          [once, 1], [holds, each + kerf], [across, -(width + kerf)], ...turn,
          ...panels.flatMap((panel, at) => (panel.length <= each ? [[longEnough[at]!, -most] as const] : [])),
        ]);
      panels.forEach((_, panel) => {
        const atLeast = row(-Infinity, 0);
        const atMost = row(-Infinity, 0);
        column(0, most, [
          [counts[panel]!, 1], [shared[panel]!, 1], [longEnough[panel]!, 1], [across, joints + kerf], [atLeast, least], [atMost, -greatest],
        ]);
        column(0, width, [[needs[panel]!, 1], [across, 1], [atLeast, -1], [atMost, 1]]);
      });
    }
  }
  return model;
};
