import { call } from "../../src/functions/call";
import { GLUEUP } from "../../src/functions/yield/glueup";
test("try", () => {
  const FIVE = GLUEUP.examples[0].given.tally; const T = GLUEUP.examples[0].given.panels;
  const show = (r: any) => console.log(Array.isArray(r) ? r.map((x: any) => x.join(" | ")).join("\n") : r);
  show(call(GLUEUP, [T, FIVE]));
  show(call(GLUEUP, [T, FIVE, [["together", "board"]]]));
  const G2 = [["label","length","width","thickness","price"],["A",92,8,"5/4",44],["B",92,8,"5/4",44],["C",92,6,"5/4",33],["D",92,7.5,"5/4",40],["E",92,9,"5/4",50]];
  const two = [["label","length","width","quantity"],["tread",42,11.25,2]];
  show(call(GLUEUP, [two, G2, [["strips", 2]]]));
  show(call(GLUEUP, [two, G2, [["strips", 2],["greatest strip", 8]]]));
  show(call(GLUEUP, [[["label","length","width","quantity"],["case side",31,16.875,2]], [["length","width","thickness"],[130,11,"4/4"]], [["rough width","none"],["joint","1/32"],["greatest strip", 8.5]]]));
});
