// docs/notation.md: how lists and the Shop sheet may be written, from the tables that the readers are tested with.
import { code, generated, table, textOf } from './markdown.mjs';

const titles = {
  section: ['Sections', "Under Section. A length may follow: `PL1/2X6X1'-0`."],
  grade: ['Grades', 'Under Grade. Names are read loosely; an unknown one is refused with names like it.'],
  hole: ['Holes', 'Under Hole, and in calls. A count may stand before or behind the size.'],
  bolt: ['Bolts', 'Under Bolt. What stands behind the diameter changes nothing here.'],
  length: ['Lengths', 'Under Length, Edge, End, Pitch, Gage and wherever a size is asked for.'],
  count: ['Counts', 'Under Qty and Holes.'],
  angle: ['Angles', 'Under Miter left and Miter right, from square.'],
  force: ['Forces', 'In the table Presses of the Shop sheet.'],
};

export function notationPage({
  allNotations,
  notationKinds,
  refused,
  rowFields,
  groupFields,
  otherHeadings,
}) {
  const shown = (reading) => (reading === refused ? 'refused' : textOf(reading));
  const parts = notationKinds.map((kind) => {
    const [title, text] = titles[kind];
    const rows = allNotations
      .filter((each) => each.kind === kind)
      .map((each) => [code(each.text), shown(each.inInches), shown(each.inMm), each.source]);
    const lines = table(['written', 'in an inch shop', 'in a mm shop', 'source'], rows);
    return `## ${title}\n\n${text}\n\n${lines}`;
  });
  const headings = [...rowFields, ...groupFields].map(({ key, name, synonyms }) => [
    name,
    [...synonyms, ...(otherHeadings(key) ?? [])].map(textOf).join(', '),
  ]);
  return `${generated}

# How to write it

Every line of these tables is read exactly so, and tested in both units. Capitals, spaces, the signs between sizes
(x X × *), marks of feet, inches and diameter, dashes and fraction characters change nothing. A bare number is in the
shop's unit, or in the unit that its heading states. What may be read two ways is refused, with both readings.

${parts.join('\n\n')}

## Headings

A list may call its columns by any of these names, in any order. \`Hole 2\`, \`Edge 2\` … open a further group of holes;
\`Length (mm)\` states the unit below it, for text too. Thickness and Width beside each other are read as one section,
Feet and Inches as one length.

${table(['column', 'also called'], headings)}
`;
}
