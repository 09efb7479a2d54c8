// docs/shop-sheet.md: the tables of the shop, the press rows and settings from the code that reads them.
import { code, generated, table, textOf } from './markdown.mjs';

/** What a cell of each kind may hold. */
const kinds = {
  station: 'yes or no',
  legs: 'one, both or no',
  force: 'a force in its unit: US ton, tonne or kN; `t` is the tonne (1000 kgf) in a shop in mm',
  length: 'a length',
  lengths: 'sizes with a comma and a space between: `1, 1-1/2, 2`',
  stress: 'a stress: ksi or MPa',
  ratio: 'a share from 0.05 to 1',
  allowance: 'a factor from 1 to 3',
  angle: 'degrees',
  mass: 'a mass: lb or kg',
  amount: 'an amount of money',
  count: 'a number',
  yesNo: 'yes or no',
  legPosition: 'down, up or both',
  seconds: 'seconds',
  minutes: 'minutes',
  speed: 'a speed: in/s or mm/s',
  rate: 'a number from 1 to 600',
};

/** Settings of the checks have no text of their own in the code; a key that is missing here fails the generation. */
const meanings = {
  shearRatio: 'shear strength as a share of the upper tensile strength, where a grade states none',
  holeToThickness: 'smallest hole as a multiple of the thickness',
  punchAllowanceMPa: 'stress a punch may carry in compression',
  edgeCode: 'code of edge distance and pitch',
  clearanceMethod: 'how the total die clearance is chosen',
  strippingShare: 'stripping force as a share of the punching force',
  holeFit: "fit of a bolt's hole where none is named",
  jobSpec: 'whether holes may be punched to full size; see below',
  veeRatio: 'V opening of a bend as a multiple of the thickness',
  holesWithoutPitch:
    'holes of a row without a pitch: their distances stay open, or they count as evenly spaced',
  barStockToWidth: 'what a plate on the list is cut from: a flat bar of its width, or sheet',
};

export function shopSheetPage(sources) {
  const presses = sources.pressItems.map(({ name, kind, meaning, whenBlank }) => [
    name,
    known(kinds, kind),
    textOf(whenBlank ? `${meaning}; ${usual(whenBlank)} when blank` : meaning),
  ]);
  const settings = Object.entries(sources.settingRows).map(([key, setting]) => [
    setting.name,
    allowed(setting, sources),
    'whenBlank' in setting ? setting.whenBlank.replace(/,$/, '') : defaultOf(key, sources),
    'meaning' in setting ? setting.meaning : known(meanings, key),
  ]);
  const units = ['Units', 'in, mm', 'in', 'what bare numbers mean and results are given in'];
  return [
    generated,
    opening,
    table(['Item', 'Cell', 'Meaning'], presses),
    tools,
    grades,
    settingsOpening,
    table(['Setting', 'Value', 'Default', 'Meaning'], [units, ...settings]),
    jobSpecs,
    stock(sources.stockColumns),
  ].join('\n\n');
}

/** The usual value in both units, once where they agree. */
function usual(whenBlank) {
  return whenBlank.in === whenBlank.mm ? whenBlank.in : `${whenBlank.in} (${whenBlank.mm})`;
}

function known(texts, key) {
  if (texts[key] === undefined) throw new Error(`scripts/reference/shopSheet.mjs has no text for ${key}.`);
  return texts[key];
}

/** What a setting allows, from the refusal of a value no setting takes. */
function allowed({ read }, { InputError }) {
  try {
    read('?', '', 'in');
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return textOf(error.failure.allowed.replace(/^Write (?:a number )?/, '').replace(/\.$/, ''));
  }
  throw new Error('A setting took a question mark as its value.');
}

function defaultOf(key, { defaultSettings, megapascalPerKsi }) {
  const value = defaultSettings[key];
  return key.endsWith('MPa') ? `${Math.round(value / megapascalPerKsi)} ksi` : String(value);
}

const opening = `# The sheet Shop

Everything a result depends on stands in cells: four ordinary tables, and one cell that stands for all of them. The
tables may be called anything and stand anywhere; the formula of the cell named ${code('ShopStamp')} names them:

\`\`\`text
=TONROW.SHOP(Presses[[#Headers],[#Data]],Tools[[#Headers],[#Data]],Grades[[#Headers],[#Data]],Settings[[#Headers],[#Data]])
in · 2 presses · rules 1 · 7K7Q-29MX-DT4P
\`\`\`

That text is the stamp: the unit, how many presses, the edition of the rules, and twelve characters that change with
any value in the tables. **Two people with the same stamp have the same numbers.** A press with a cell that cannot be
read still gives a stamp, which names it (${code('Bay C incomplete')}); only rows that need that cell fail. A row that no
rule reads is kept and counted in the stamp.

Headings and the names in the first column are the file format and never change. They are read without regard to case
and spaces, in any order of rows. Values are read strictly: what cannot be read is refused, never guessed.

## Presses

A spec sheet with **one column per press**: the headings are ${code('Item')}, ${code('Unit')}, then the name of each
press. A number takes the unit of its Unit cell, else the unit of the shop.

- A value is a limit.
- ${code('none')}: there is no such limit.
- **Blank: the usual value where the meaning names one, else unknown.** A check that needs an unknown value is
  reported as not made, and such a row never says OK.

A row may be missing; that is the same as blank.`;

const tools = `## Tools

Punches and dies on hand, one per row. Without this table tools are not checked, and the note of a row says so; with
it, a hole without its punch and die is ${code('No tool')}.

${table(
  ['Heading', 'Meaning'],
  [
    ['Press', 'name of the press it fits; `any` or blank fits every press'],
    ['Kind', '`punch` or `die`; must be there'],
    ['Shape', '`round`, `square`, `rectangle`, `slot` or `hexagon`; round when blank'],
    ['Size', 'diameter, side, width or distance across flats; of a die, its opening; must be there'],
    ['Length', 'length of a slot or rectangle'],
    ['Body', 'diameter of its body; a punch must fit it, and it must fit Punch body of the press'],
    ['Holder', 'sleeve or stem family of a punch, as text: changing it takes its own time'],
    ['Height', 'of a punch, from the face that carries it to its tip: for the travel of the ram'],
    ['Count', 'how many are on hand; 1 when blank, `none` for none'],
  ],
)}

Other columns (Hits since grind, Note) are the shop's own: no rule reads them.`;

const grades = `## Grades

The shop's own grades, beside those Tonrow knows. A name that stands here is used before a known grade of that name.

${table(
  ['Heading', 'Meaning'],
  [
    ['Grade', 'its name'],
    ['Tensile min', 'least tensile strength: ksi or MPa'],
    ['Tensile upper', 'greatest tensile strength; shear strength is taken from it'],
    ['Shear', 'shear strength, where it is known; used before Tensile upper'],
    ['Density', 'lb/ft³ (inch shop) or kg/m³ (mm shop); steel when blank'],
    ['Source', 'where the values come from; shown in the working'],
  ],
)}

Tensile upper or Shear must be there.`;

const settingsOpening = `## Settings

Two columns, ${code('Setting')} and ${code('Value')}. A blank value, or no such row, leaves the default.`;

const jobSpecs = `Job spec, what each asks of a punched hole: ${code('none')}, nothing; ${code('EN 1090-2 EXC1')} and ${code(
  'EN 1090-2 EXC2',
)}, thickness up to
the hole; ${code('EN 1090-2 EXC3')} and ${code('EN 1090-2 EXC4')}, the same, and over 3 mm punched 2 mm under and reamed;
${code('AISC older rule')}, thickness up to the bolt and 1/8 in; ${code('CSA S16')}, up to the bolt and 4 mm; ${code(
  'AS 4100',
)}, yield
strength up to 360 MPa and thickness up to 5600 over it; ${code('AASHTO')}, 3/4, 5/8 or 1/2 in by steel;
${code('seismic or fatigue')}, never; ${code('galvanized')}, under 3/4 in.`;

const stock = (columns) => `## Stock

Lengths that bars come in, one per row, for stock plans. The table is called ${code('Stock')}, or ${code('ShopStock')} where
that name is taken; it is not part of the stamp, and the plan prints what it took. Lengths of one section go by what the
section is, not by its spelling.

${table(
  ['Heading', 'Meaning'],
  columns.map(({ name, meaning }) => [name, meaning]),
)}

A row that cannot be read is named, and nothing is planned of its section until it can. Where only some lengths of a
section have a price, the least length is bought instead of the least cost. Without prices ${code('Material price')} of the
settings gives the cost.`;
