import type { LengthUnit } from '../../../src/core/quantity/units.js';

/** A list as a fabricator may send it, and what its columns are. */
export interface ListLayout {
  name: string;
  unit: LengthUnit;
  /** Rows of cells: a line each, `|` between cells. */
  cells: string;
  /** A column each: what it is read as; `?` behind it where it is guessed and asked about; `-` not read; `!` named. */
  columns: string;
  /** What the first part is read as: section, grade, holes. */
  first: string;
}

export const listLayouts: readonly ListLayout[] = [
  {
    name: 'plain American',
    unit: 'in',
    cells: `Mark|Qty|Section|Length|Grade|Hole|Holes|Edge|End
            a1|2|L3X3X1/4|2'-6|A36|13/16|4|1-1/4|1-1/4`,
    columns: 'Mark|Qty|Section|Length|Grade|Hole|Holes|Edge|End',
    first: 'L3X3X1/4, A36, 4 × Ø13/16',
  },
  {
    name: 'bill of material of a detailer',
    unit: 'in',
    cells: `Pc Mark|No. Req'd|Profile|Lgth|Matl|Remarks
            p1|4|PL 3/8 X 6|12|A572 Gr 50|galv`,
    columns: 'Mark?|Qty?|Section|Length?|Grade?|-',
    first: 'PL3/8X6, A572-50',
  },
  {
    name: 'dots and abbreviations',
    unit: 'in',
    cells: `Mk.|Qty.|Size|Len.|Mat'l Grade|Dia.|E.D.|M/C
            x|1|FB 1/2x4|10|A36|13/16|1-1/4|Bay A`,
    columns: 'Mark?|Qty|Section|Length|Grade?|Hole?|Edge?|Press',
    first: 'FB1/2X4, A36, 1 × Ø13/16',
  },
  {
    name: 'bolts and a second hole',
    unit: 'in',
    cells: `Mark|Qty|Shape|Cut Length|Steel|Bolts|Dia|Dia 2
            b|1|L4X4X1/2|36|A36|3/4|13/16|15/16`,
    columns: 'Mark|Qty|Section|Length|Grade|Bolt?|Hole?|Hole 2?',
    first: 'L4X4X1/2, A36, 1 × Ø13/16, 1 × Ø15/16',
  },
  {
    name: 'a title above',
    unit: 'in',
    cells: `Catwalk, north stair||||
            ||||
            Mark|Qty|Profile|Length|Material
            c|3|C8X11.5|10'-0|A36`,
    columns: 'Mark|Qty|Section|Length|Grade',
    first: 'C8X11.5, A36',
  },
  {
    name: 'two rows of headings',
    unit: 'in',
    cells: `Mark|Qty|Profile|Grade|Hole|||
            ||||Dia|Qty|Edge|End
            d|2|PL1/2X6|A36|13/16|4|1-1/2|1-1/2`,
    columns: 'Mark|Qty|Section|Grade|Hole|Holes|Edge|End',
    first: 'PL1/2X6, A36, 4 × Ø13/16',
  },
  {
    name: 'group titles above a whole row',
    unit: 'in',
    cells: `||||Holes||Miter|
            Mark|Qty|Section|Grade|Dia|No|Left|Right
            e|2|L3X3X1/4|A36|13/16|2|45|22-1/2`,
    columns: 'Mark|Qty|Section|Grade|Hole?|Holes?|Miter left|Miter right',
    first: 'L3X3X1/4, A36, 2 × Ø13/16',
  },
  {
    name: 'thickness and width',
    unit: 'in',
    cells: `Mark|Qty|Thk|Wd|Length|Grade|Hole
            f|8|3/8|6|12|A36|(4) 13/16`,
    columns: 'Mark|Qty|Thickness|Width|Length|Grade|Hole',
    first: 'PL3/8X6, A36, 4 × Ø13/16',
  },
  {
    name: 'shape, thickness and width',
    unit: 'in',
    cells: `Item|Qty|Shape|Thickness|Width|Length|Material
            1|8|FB|1/2|4|12|A36
            2|1|L3X3X1/4|||24|A36`,
    columns: 'Mark|Qty|Section|Thickness|Width|Length|Grade',
    first: 'FB1/2X4, A36',
  },
  {
    name: 'feet and inches',
    unit: 'in',
    cells: `Mark|Qty|Section|Feet|Inches|Grade
            g|1|L3X3X1/4|10|6 1/2|A36`,
    columns: 'Mark|Qty|Section|Feet|Inches|Grade',
    first: 'L3X3X1/4, A36, 126-1/2 in long',
  },
  {
    name: 'units in headings',
    unit: 'in',
    cells: `Mark|Qty|Section|Length (ft)|Grade|Hole (in)
            h|1|L3X3X1/4|40|A36|13/16`,
    columns: 'Mark|Qty|Section|Length|Grade|Hole',
    first: 'L3X3X1/4, A36, 1 × Ø13/16, 480 in long',
  },
  {
    name: 'a size column nobody knows',
    unit: 'in',
    cells: `Mark|Qty|Section|Grade|Fastener|Color
            i|1|PL3/8X6|A36|13/16|red
            j|1|PL3/8X6|A36|15/16|red`,
    columns: 'Mark|Qty|Section|Grade|!|-',
    first: 'PL3/8X6, A36',
  },
  {
    name: 'drill or punch',
    unit: 'in',
    cells: `Mark|Qty|Section|Grade|Drill/Punch
            k|1|PL3/8X6|A36|13/16 TYP`,
    columns: 'Mark|Qty|Section|Grade|Hole?',
    first: 'PL3/8X6, A36, 1 × Ø13/16',
  },
  {
    name: 'sections by their cells alone',
    unit: 'in',
    cells: `Tag|What|Steel spec|Pieces
            l|PL3/8X6|A36|3
            m|L3X3X1/4|A36|4`,
    columns: '-|Section?|Grade?|Qty',
    first: 'PL3/8X6, A36',
  },
  {
    name: 'Mtr that holds grades',
    unit: 'in',
    cells: `Mark|Qty|Section|Mtr
            n|1|PL3/8X6|A36
            o|1|PL3/8X6|A572-50`,
    columns: 'Mark|Qty|Section|Grade?',
    first: 'PL3/8X6, A36',
  },
  {
    name: 'beams and pipes among plates',
    unit: 'in',
    cells: `Mark|Qty|Profile|Grade|Length
            q|1|W12X26|A992|20'-0
            r|1|PIPE 1-1/2 STD|A53|10'-0`,
    columns: 'Mark|Qty|Section|Grade|Length',
    first: 'W12X26, A992, 240 in long',
  },
  {
    name: 'invisible characters',
    unit: 'in',
    cells: `\uFEFFMark|Q\u200Bty|Sec\u00ADtion|Gr\u200Bade|Hole\u200E
            s|1|PL\u200B3/8X6|\u200BA36|13/16\uFEFF`,
    columns: 'Mark|Qty|Section|Grade|Hole',
    first: 'PL3/8X6, A36, 1 × Ø13/16',
  },
  {
    name: 'gage and pitch',
    unit: 'in',
    cells: `Mark|Qty|Section|Grade|Bolt dia|Hole qty|Gauge|Spacing|End distance|Edge distance
            t|1|L4X4X1/2|A36|3/4" A325|2|2-1/2|3|1-1/4|1-1/2`,
    columns: 'Mark|Qty|Section|Grade|Bolt|Holes|Gage|Pitch|End|Edge',
    first: 'L4X4X1/2, A36, 2 × Ø13/16',
  },
  {
    name: 'center to center',
    unit: 'in',
    cells: `Mark|Ea.|Member|Gr.|Hole size|# of holes|C/C
            u|1|FB 3/8x4|A36|13/16|3|3`,
    columns: 'Mark|Qty?|Section?|Grade?|Hole|Holes?|Pitch?',
    first: 'FB3/8X4, A36, 3 × Ø13/16',
  },
  {
    name: 'notches and clips',
    unit: 'in',
    cells: `Mark|Qty|Section|Grade|Length|Notch width|Notch depth|Clip size|Corners
            v|1|PL1/2X6|A36|12|1|1|1x1|2`,
    columns: 'Mark|Qty|Section|Grade|Length|Notch width|Notch depth|Corner clip|Corners',
    first: 'PL1/2X6, A36, 12 in long',
  },
  {
    name: 'plain German',
    unit: 'mm',
    cells: `Pos|Stk|Profil|Länge|Werkstoff|Bohrung|Anzahl Löcher
            1|4|FLB 100x10|250|S235JR|18|2`,
    columns: 'Mark|Qty|Section|Length|Grade|Hole|Holes',
    first: 'FB10X100, S235, 2 × Ø18',
  },
  {
    name: 'German with thickness and width',
    unit: 'mm',
    cells: `Pos.|Stückzahl|Dicke|Breite|Länge|Güte|Loch Ø
            1|4|15|200|300|S355J2+N|22`,
    columns: 'Mark|Qty|Thickness|Width|Length|Grade|Hole',
    first: 'PL15X200, S355, 1 × Ø22',
  },
  {
    name: 'symbols of the code',
    unit: 'mm',
    cells: `Pos|Profil|Stk|Güte|d0|n|e1|e2|p1|w
            1|L80x8|2|St37-2|18|4|35|35|60|45`,
    columns: 'Mark|Section|Qty|Grade|Hole|Holes|End|Edge|Pitch|Gage',
    first: 'L80X80X8, S235, 4 × Ø18',
  },
  {
    name: 'letters of a plate',
    unit: 'mm',
    cells: `Pos|Stk|t|b|L|Werkstoff
            1|2|10|100|500|S235JR`,
    columns: 'Mark|Qty|Thickness|Width|Length?|Grade',
    first: 'PL10X100, S235, 500 mm long',
  },
  {
    name: 'lengths in meters',
    unit: 'mm',
    cells: `Pos|Anzahl|Profil|Länge (m)|Material
            1|2|HEA160|13|S355J2
            2|2|UPN120|6.000|S235JR`,
    columns: 'Mark|Qty|Section|Length|Grade',
    first: 'HEA160, S355, 13000 mm long',
  },
  {
    name: 'plain French',
    unit: 'mm',
    cells: `Repère|Quantité|Profilé|Longueur|Nuance|Trou|Nb trous
            1|4|Plat 100x10|250|S235JR|Ø18|2`,
    columns: 'Mark|Qty|Section|Length|Grade|Hole|Holes',
    first: 'FB10X100, S235, 2 × Ø18',
  },
  {
    name: 'plain Spanish',
    unit: 'mm',
    cells: `Marca|Cantidad|Perfil|Longitud|Acero|Agujero|Agujeros
            1|4|pletina 100x10|250|S275JR|18|2`,
    columns: 'Mark|Qty|Section|Length|Grade|Hole|Holes',
    first: 'FB10X100, S275, 2 × Ø18',
  },
  {
    name: 'two rows in German',
    unit: 'mm',
    cells: `Pos|Stk|Profil|Güte|Bohrung|||
            ||||d0|n|e1|e2
            1|4|FL 100x10|S235JR|18|2|35|35`,
    columns: 'Mark|Qty|Section|Grade|Hole|Holes|End|Edge',
    first: 'FB10X100, S235, 2 × Ø18',
  },
  {
    name: 'counts in words',
    unit: 'mm',
    cells: `Pos|Stück|Profil|Werkstoff|Bohrung
            1|4 Stk|VKT 20|1.0038|4Ø18
            2|(2)|RD 20|S235|D22`,
    columns: 'Mark|Qty|Section|Grade|Hole',
    first: 'SQ20, S235, 4 × Ø18',
  },
  {
    name: 'imperial list in a metric shop',
    unit: 'mm',
    cells: `Mark|Qty|Section|Grade|Length (in)|Hole (in)
            1|4|L3X3X1/4|A36|24|13/16`,
    columns: 'Mark|Qty|Section|Grade|Length|Hole',
    first: 'L3X3X1/4, A36, 1 × Ø20.64, 609.6 mm long',
  },
  {
    name: 'two columns of one name',
    unit: 'in',
    cells: `Mark|Qty|Section|Grade|Hole|Edge|Hole
            1|4|PL3/8X6|A36|13/16|1-1/2|15/16`,
    columns: 'Mark|Qty|Section|Grade|Hole|Edge|Hole',
    first: 'asked',
  },
];
