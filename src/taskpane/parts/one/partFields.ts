import type { LengthUnit } from '../../../core/quantity/units.js';
import type { PartCells } from './checkPart.js';

export interface PartField {
  heading: string;
  example: string;
  /** Words need more room than a size. */
  width?: 'whole' | 'wide';
}

export const cutByHeading = 'Cut by';
/** What a part may be cut by, as a cell says it, and as a person does. */
export const cutByWords = { '': 'the press', saw: 'a saw', burn: 'burning', bought: 'bought to length' };

/** A plate with two holes that is cut elsewhere, to begin with: what differs is typed over it. */
export function plateToBegin(unit: LengthUnit): PartCells {
  const [Section, Grade, Length, Hole, edge] =
    unit === 'in' ? ['PL3/8x6', 'A36', '12', '13/16', '2'] : ['PL10x150', 'S275', '300', '22', '50'];
  return { Section, Grade, Length, Hole, Holes: '1 each end', Edge: edge, End: edge, [cutByHeading]: 'saw' };
}

/** The inputs of one part, by the headings of a list; examples are in the unit of the shop. */
export function partFields(unit: LengthUnit): { first: PartField[]; more: PartField[] } {
  const [section, length, hole, bolt, edge, end, pitch, small] =
    unit === 'in'
      ? ['L3x3x1/4, PL3/8x6, FB 1/2x4', "2'-6 1/2", '13/16', '3/4', '1-1/4', '1-1/2', '3', '1/2']
      : ['L75x75x6, PL10x150', '775', '22', 'M20', '32', '38', '75', '12'];
  const first = [
    { heading: 'Section', example: section, width: 'whole' },
    { heading: 'Grade', example: unit === 'in' ? 'A36' : 'S275' },
    { heading: 'Length', example: length },
    { heading: 'Qty', example: '1' },
    { heading: 'Hole', example: hole },
    { heading: 'Holes', example: '1 each end', width: 'wide' },
    { heading: 'Bolt', example: bolt },
    { heading: 'Edge', example: edge },
    { heading: 'End', example: end },
    { heading: cutByHeading, example: '', width: 'wide' },
  ];
  const more = [
    { heading: 'Edge kind', example: 'sheared, sawn, gas cut, rolled', width: 'whole' },
    { heading: 'End kind', example: 'sheared, sawn, gas cut', width: 'wide' },
    { heading: 'Pitch', example: pitch },
    { heading: 'Gage', example: edge },
    { heading: 'Leg', example: 'the leg the holes are in', width: 'wide' },
    { heading: 'Slot', example: 'along, across', width: 'wide' },
    { heading: 'Miter left', example: '45' },
    { heading: 'Miter right', example: '45' },
    { heading: 'Long side', example: 'bottom, top, heel, toe', width: 'wide' },
    { heading: 'Corner clip', example: small },
    { heading: 'Corners', example: '2' },
    { heading: 'Clip at', example: 'top left' },
    { heading: 'Notch width', example: edge },
    { heading: 'Notch depth', example: small },
    { heading: 'Notches', example: '1' },
    { heading: 'Notch at', example: 'bottom edge 6', width: 'wide' },
    { heading: 'Bend length', example: length },
    { heading: 'Bends', example: '1' },
    { heading: 'Bend at', example: 'left end 4' },
  ];
  return { first: first as PartField[], more: more as PartField[] };
}
