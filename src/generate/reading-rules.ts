/** How functions read what they are given, a paragraph each. */
export const READING_RULES: readonly string[] = [
  "A length is a number in the function's unit, or text in any notation: 9' 1 1/2\", 9-1-1/2, 7-5/8, 2781 mm. Text with a unit " +
    'of its own is converted. What TAPE writes is read too, 7 5/8"+ as the mark it names. 9-1 is refused: it may be feet and ' +
    "inches, or a range.",
  "A function without a `unit` argument takes its unit from the lengths given: a bare number is inches, feet and inches as text " +
    "mix with it, and metric text in every length is answered in millimetres. Metric text beside a bare number or inches is " +
    "refused. 0, an empty cell and an argument left out go with either. TAPE reads each cell by itself.",
  "A rate with a percent sign is what it says, up to 1000%. A number is a share, 0.25 for 25 %; 2.5 is 250 %, which a markup or " +
    "an overhead on cost may be, up to 5; for two and a half percent write 2.5%.",
  "Sizes promised stand beside the arguments; a range beyond its size is refused with both numbers. Whole columns may be given: " +
    "empty rows at the end of a table do not count.",
  "A default length is a length, not a number: a nosing of 1 1/4 in is 31.75 mm in a call in millimetres.",
  "Tables are read by their headings or labels, whatever their case, spaces, punctuation, spelling and plural: labor or labour, " +
    "mitered or mitred, center or centre, hour or hours, going or run, string or stringer are one word. A heading of ours that a " +
    "table does not read is refused by name, with the nearest and where it belongs; columns of your own that none of our tables " +
    "knows may stay, and so may a note. A table whose first row holds no known heading is read by position. An empty cell and 0 are " +
    "the same thing in a table. A default is taken by leaving the row or column out.",
  "A bad argument, a missing heading or an empty table fails the whole call with a sentence that names it. A bad row shows the " +
    "error in its number cells and the sentence in its note; the other rows answer.",
];
