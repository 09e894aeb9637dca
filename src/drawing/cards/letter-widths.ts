/**
 * Widths of letters in thousandths of their size: the wider of DejaVu Sans and of the faces made to Helvetica's widths (Adobe's metrics of
 * it), so that text set in any usual face is no wider than it was measured.
 */
const PLAIN: readonly number[] = [
  318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636, 636,
  636, 636, 337, 337, 838, 838, 838, 531, 1015, 684, 686, 722, 770, 667, 611, 778, 752, 295, 500, 667, 557, 863, 748, 787,
  667, 787, 722, 667, 611, 732, 684, 989, 685, 667, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635,
  634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
];
const BOLD: readonly number[] = [
  348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696, 696, 696, 696, 696, 696,
  696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683, 683, 821, 837, 372, 556, 775, 637, 995, 837, 850,
  733, 850, 770, 720, 682, 812, 774, 1103, 771, 724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716, 678, 435, 716,
  712, 343, 343, 665, 343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712, 365, 712, 838,
];
const FIRST = 32;
/** Degree sign, middle dot; anything else counts as a wide capital. */
const OTHERS: Readonly<Record<string, number>> = { "°": 500, "·": 380 };
const WIDEST = 1100;
const PER_SIZE = 1000;

export const textWidth = (text: string, size: number, isBold: boolean): number => {
  const table = isBold ? BOLD : PLAIN;
  const thousandths = [...text].reduce((sum, letter) => sum + (table[letter.charCodeAt(0) - FIRST] ?? OTHERS[letter] ?? WIDEST), 0);
  return (thousandths / PER_SIZE) * size;
};
