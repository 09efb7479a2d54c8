// docs/headings.md: every heading of a parts list, from the list that the rows are read by.
import { code, generated, table, textOf } from './markdown.mjs';

export function headingsPage({ rowFields, groupFields, headingMeanings, headingUnits, otherHeadings }) {
  const rowOf = ({ key, name, synonyms }) => [
    code(name),
    textOf(headingMeanings[key]),
    headingUnits[key] ?? '',
    [...synonyms, ...(otherHeadings(key) ?? [])].map(textOf).join(', '),
  ];
  const columns = ['heading', 'what stands below it', 'unit', 'also called'];
  return `${generated}

# The headings of a parts list

The columns of a list stand in any order, under any of these names. Section and Grade are enough to begin with; what a
check still needs, the row says. Other columns are left alone. How each cell may be written:
[notations](notation.md).

![A plate and an angle with Edge, End, Pitch, Gage and Leg](pictures/headings.svg)

## Of the part

${table(columns, rowFields.map(rowOf))}

## Of its holes

${code('Hole 2')}, ${code('Edge 2')} … open a further group of holes in the same row.

${table(columns, groupFields.map(rowOf))}
`;
}
