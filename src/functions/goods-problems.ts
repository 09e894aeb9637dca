/** Wording of what is wrong with goods planned, bought and used, for each function that sets them against one another. */
export const GOODS_PROBLEMS = {
  "units-differ": {
    cell: "#VALUE!",
    says:
      '{table}, {item}: is in "{unit}" in row {row}, other rows are in "{other}", which does not convert; give one unit, or ' +
      "board feet where the plan has gross",
  },
  "unit-is-empty": {
    cell: "#VALUE!",
    says: '{table}, {item}: unit is empty in row {row}; other rows of "{item}" are in {other}; give the unit',
  },
  "bought-without-price": {
    cell: "#VALUE!",
    says: "{table}, {item}: price and cost are both empty or 0 in row {row}; give what was paid",
  },
  "planned-half-without-price": {
    cell: "#VALUE!",
    says: "{table}, {item}: one row has a price and another has none, see row {row}; give both a price",
  },
  "money-without-quantity": {
    cell: "#VALUE!",
    says: "{table}, {item}: quantity is empty or 0 in row {row}, beside money of {money}; give the quantity",
  },
  "quantity-of-money": {
    cell: "#VALUE!",
    says:
      "{table}, {item}: a quantity of {quantity} in row {row}, but this is money and no goods; give its cost with the quantity " +
      "empty or 1, and no row under used",
  },
  "charges-of-money": {
    cell: "#VALUE!",
    says: "{table}, {item}: is a charge itself in row {row}; leave its charges and waste empty",
  },
  "planned-nothing-for-money": { cell: "#VALUE!", says: "{table}, {item}: a quantity of 0 costs {cost}; give the quantity" },
  "cost-against-quantity": {
    cell: "#VALUE!",
    says:
      "{table}, {item}: a quantity of {quantity} costs {cost} in row {row}; a return has a negative quantity and brings money " +
      "back, write {instead}",
  },
  "price-and-cost-differ": {
    cell: "#VALUE!",
    says: "{table}, {item}: {quantity} at {price} is not the cost of {cost} in row {row}; give one of the two, or make them agree",
  },
  "price-charges-and-cost-differ": {
    cell: "#VALUE!",
    says:
      "{table}, {item}: {quantity} at {price} and charges of {charges} are not the cost of {cost} in row {row}; the cost has the " +
      "charges in it: leave the price out, or make them agree",
  },
  "charges-over-cost": {
    cell: "#VALUE!",
    says: "{table}, {item}: charges of {charges} are more than the cost of {cost} in row {row}; the cost has the charges in it",
  },
  "waste-over-quantity": {
    cell: "#VALUE!",
    says: "{table}, {item}: waste of {waste} is more than the quantity of {quantity} in row {row}; waste is part of the quantity",
  },
} as const;
