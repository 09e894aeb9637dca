import type { GlueWork, PanelKind } from "./glue-work";

/** The most net width that a section gives, over how many strips it is ripped into. */
export const mostNet = (
  width: number, { least, greatest }: Pick<PanelKind, "least" | "greatest">, { kerf, joints }: Pick<GlueWork, "kerf" | "joints">,
): number => {
  let most = 0;
  for (let strips = 1; ; strips += 1) {
    const net = width + kerf - strips * (kerf + joints);
    if (net < strips * least) return most;
    most = Math.max(most, Math.min(strips * greatest, net));
  }
};

/**
 * The same where each strip counts so much more than its net width as ripping it takes: every panel has its least number of strips, and
 * each past the one that a section gives anyway costs a kerf and two joints.
 */
export const mostWithRips = (
  width: number, { least, greatest }: Pick<PanelKind, "least" | "greatest">, { kerf, joints }: Pick<GlueWork, "kerf" | "joints">,
): number => {
  let most = 0;
  for (let strips = 1; ; strips += 1) {
    if (width + kerf - strips * (kerf + joints) < strips * least) return most;
    most = Math.max(most, Math.min(strips * (greatest + kerf + joints), width + kerf));
  }
};
