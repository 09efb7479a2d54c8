import type { HostArgument } from '../../../src/headless/functions/hostCall.js';
import { bayA, bayB, pressTable, settingTable } from '../../support/sampleShop.js';

export const presses = pressTable({ 'Bay A': bayA, 'Bay B': bayB });
export const tools = [
  ['Press', 'Kind', 'Shape', 'Size', 'Length', 'Count'],
  ['any', 'punch', 'round', '13/16', null, 2],
  ['any', 'die', 'round', '27/32', null, 1],
];
export const grades = [
  ['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'],
  ['Bay plate', '60 ksi', '75 ksi', null, null, 'mill certificate'],
];
export const settings = settingTable({ Units: 'in', 'Edge code': 'AISC' });
/** The shop as its own cell gives it: all four tables. */
export const shopArguments: HostArgument[] = [presses, tools, grades, settings];

const headings = ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Hole', 'Edge', 'End', 'Pitch', 'Press'];
const row = ['C1', 4, 'FB 3/8x4', 'A36', 12, '2 @ 13/16', '1-1/2', '1-1/2', 9, 'Bay A'];

const corners = [
  [2, 2],
  [10, 2],
  [2, 8],
  [10, 8],
];

/** A call that must be answered with a value: its required arguments, options left out. */
export interface GoodCall {
  name: string;
  /** Stands for the stamp of the sample shop. */
  given: (stamp: string) => HostArgument[];
  /** A number to two digits, or what the answer must hold as text; where it comes from stands in the checks. */
  value: number | RegExp;
  /** The same call written in other ways: text with units, numbers, other spellings. */
  same: (stamp: string) => HostArgument[][];
}

export const goodCalls: readonly GoodCall[] = [
  {
    name: 'PUNCHFORCE',
    given: () => ['13/16', '3/8', 'A36'],
    value: 28.716,
    same: () => [
      [0.8125, 0.375, 'astm a36'],
      ['20.6375 mm', '9.525 mm', 'A 36', 'in'],
      ['Ø 13/16"', '3/8 in', 'tensile 80 ksi', 'IN', 1],
    ],
  },
  {
    name: 'SHEARFORCE',
    given: () => ['FB 1/2x4', 'A36'],
    value: 60,
    same: () => [['FB 12.7x101.6 mm', 'shear 60 ksi', 'in', 0, 0]],
  },
  { name: 'HOLEMIN', given: () => ['1/2', 'A36'], value: 0.5, same: () => [['12.7 mm', 'a36', 'in']] },
  {
    name: 'DIECLEARANCE',
    given: () => ['3/8', 'A36'],
    value: 1 / 32,
    same: () => [[0.375, 'A36', 'in', 'PLATE']],
  },
  {
    name: 'EDGEMIN',
    given: () => ['3/4'],
    value: 1.25,
    same: () => [[0.75, 'in', 'sheared', 'AISC', 'standard']],
  },
  {
    name: 'SECTIONMASS',
    given: () => ['PL1/2X6', 12],
    value: 10.21,
    same: () => [['PL12.7x152.4 mm', `1'-0"`, 'in', 'A36']],
  },
  {
    name: 'LENGTH',
    given: () => [`2'-6 1/2"`],
    value: 30.5,
    same: () => [['30 1/2'], [30.5, 'in'], ['774.7 mm']],
  },
  {
    name: 'SHOP',
    given: () => [presses],
    value: /^"in · 2 presses · rules 1 · [A-Z2-9-]{14}"$/,
    same: () => [[presses, [[null]]]],
  },
  {
    name: 'PRESSVALUE',
    given: (stamp) => ['Bay A', 'Punch throat', stamp],
    value: 12,
    same: (stamp) => [['bay a', 'PUNCH THROAT', ` ${stamp} `]],
  },
  {
    name: 'PUNCHUSE',
    given: (stamp) => ['Bay A', '1-1/2', '1/2', 'Mild', stamp],
    value: 1,
    same: (stamp) => [['BAY A', 1.5, '12.7 mm', 'shear 50 ksi', stamp]],
  },
  {
    name: 'SHEARUSE',
    given: (stamp) => ['Bay A', 'FB 3/4x8', 'Mild', stamp],
    value: 1,
    same: (stamp) => [['Bay A', '3/4 x 8', 'mild', stamp, 0]],
  },
  {
    name: 'ROWCHECK',
    given: (stamp) => [[headings], [row], stamp],
    value: /^\[\["OK",0\.\d+,"Understood as: /,
    same: (stamp) => [[[[...headings].reverse()], [[...row].reverse()], stamp]],
  },
  {
    name: 'LISTCHECK',
    given: (stamp) => [[headings, row], stamp],
    value: /^\[\["Verdict","Share of rating","Note"\],\["OK",0\.\d+,"Understood as: /,
    same: (stamp) => [[[headings, row], stamp, 'verdict, use, note']],
  },
  {
    name: 'ROWPRESS',
    given: (stamp) => [[headings], [row], stamp],
    value: /^\[\["Press","Verdict",.*\["Bay A","OK",0\.\d+,.*\["Bay B","Near limit",/,
    same: (stamp) => [[[[...headings].reverse()], [[...row].reverse()], stamp]],
  },
  {
    name: 'ROWSETUP',
    given: (stamp) => [[headings], [row], stamp],
    value: /^\[\["Step","Station",.*\["Setting 1","punch","pedal","","",1\.5,/,
    same: (stamp) => [[[[...headings].reverse()], [[...row].reverse()], stamp]],
  },
  {
    name: 'STRIPFORCE',
    given: () => ['13/16', '3/8', 'A36'],
    value: 4.3074,
    same: () => [['20.6375 mm', 0.375, 'astm a36', 'in']],
  },
  {
    name: 'NOTCHFORCE',
    given: () => [2, 1, '1/2', 'shear 50 ksi'],
    value: 50,
    same: () => [['2"', '25.4 mm', 0.5, 'shear 50 ksi', 'in', 'edge']],
  },
  {
    name: 'BENDFORCE',
    given: () => [12, '1/4', 'tensile 80 ksi'],
    value: 15.96,
    same: () => [[`1'-0`, '6.35 mm', 'A36', 'in', 2.5]],
  },
  {
    name: 'DIEOPENING',
    given: () => ['13/16', '3/8', 'A36'],
    value: /^\[\[0\.84375\]\]$/,
    same: () => [['20.6375 mm', 0.375, 'A36', 'in', 'plate']],
  },
  {
    name: 'BOLTHOLE',
    given: () => ['3/4'],
    value: 13 / 16,
    same: () => [[0.75, 'in', 'standard', 'AISC']],
  },
  {
    name: 'PITCHMIN',
    given: () => ['3/4'],
    value: 2,
    same: () => [[0.75, 'in', 'AISC']],
  },
  { name: 'ANGLEGAGE', given: () => [3], value: 1.75, same: () => [['76.2 mm', 'in', 'usual']] },
  {
    name: 'SECTIONAREA',
    given: () => ['FB 1/2x4'],
    value: 2,
    same: () => [['PL 12.7x101.6 mm', 'in']],
  },
  {
    name: 'PAINTAREA',
    given: () => ['FB 1/2x4', 12],
    value: 0.75,
    same: () => [['PL 12.7x101.6 mm', `1'-0`, 'in']],
  },
  {
    name: 'SECTIONDIM',
    given: () => ['C8X11.5', 'web thickness'],
    value: 0.22,
    same: () => [['c8x11.5', 'Web Thickness', 'in']],
  },
  {
    name: 'GRADEVALUE',
    given: () => ['A36', 'tensile upper'],
    value: 80,
    same: () => [['astm a36', 'Tensile Upper', 'in']],
  },
  {
    name: 'NOTCHUSE',
    given: (stamp) => ['Bay A', 4, 4, '3/8', 'Mild', stamp],
    value: 1,
    same: (stamp) => [['bay a', '4"', '101.6 mm', 0.375, 'shear 50 ksi', stamp]],
  },
  {
    name: 'BENDUSE',
    given: (stamp) => ['Bay A', 12, '1/4', 'tensile 80 ksi', stamp],
    value: 0.2217,
    same: (stamp) => [['Bay A', `1'-0`, '6.35 mm', 'A36', stamp, 3]],
  },
  {
    name: 'FEETINCH',
    given: () => [30.5],
    value: /^"2'-6 1\/2\\""$/,
    same: () => [['774.7 mm', 'in', 16]],
  },
  {
    name: 'HOLESCORNER',
    given: () => [12, 10, 2],
    value: /^\[\[2,2\],\[10,2\],\[2,8\],\[10,8\]\]$/,
    same: () => [[`1'-0`, '254 mm', '2"', 'in', 2]],
  },
  {
    name: 'HOLESROW',
    given: () => [12, 2, 3],
    value: /^\[\[2,""\],\[6,""\],\[10,""\]\]$/,
    same: () => [[`1'-0`, '50.8 mm', '3', 'in', 4]],
  },
  {
    name: 'HOLESGRID',
    given: () => [12, 10, 2, 1, 2, 5],
    value: /^\[\[2,5\],\[10,5\]\]$/,
    same: () => [['304.8 mm', `10"`, '2', '1', '2 in', 5, 'in']],
  },
  {
    name: 'HOLESCIRCLE',
    given: () => [8, 4],
    value: /^\[\[4,0\],\[0,4\],\[-4,0\],\[0,-4\]\]$/,
    same: () => [['203.2 mm', '4', 'in', 360]],
  },
  {
    name: 'GAUGESETTINGS',
    given: () => [corners, 12, 10],
    value: /\[1,2,2,2,"as it lies, row 1; turned end for end, row 4","left"\]/,
    same: () => [[[...corners, [null, '']], `1'-0`, '254 mm', 'in', 'half']],
  },
  {
    name: 'GAUGECOUNT',
    given: () => [corners, 12, 10],
    value: 2,
    same: () => [[corners.map((row) => row.map((inches) => `${inches * 25.4} mm`)), 12, 10, 'in', 'HALF']],
  },
  {
    name: 'ROWHOLES',
    given: (stamp) => [[headings], [row], stamp],
    value: /\["Hole","plate",1\.5,1\.5,"Ø13\/16","given",""\]/,
    same: (stamp) => [[[[...headings].reverse()], [[...row].reverse()], stamp]],
  },
  {
    name: 'TOOLPICK',
    given: (stamp) => ['Bay A', '13/16', '3/8', 'A36', stamp],
    value: /^\[\["Ø13\/16","Ø27\/32",0\.03125,""\]\]$/,
    same: (stamp) => [['bay a', 0.8125, '9.525 mm', 'a36', stamp]],
  },
  {
    name: 'TOOLORDER',
    given: (stamp) => [[headings, row], 'Bay A', stamp],
    value: /^\[\["Mark",.*\["C1","","Ø13\/16","Ø27\/32",0\],\["0 changes of tools: no order has fewer\./,
    same: (stamp) => [[[[...headings].reverse(), [...row].reverse()], 'bay a', stamp]],
  },
  {
    name: 'STROKELIMITS',
    given: (stamp) => ['Bay A', 'punch', '3/8', stamp],
    value: /^\[\[0\.625,-0\.0787\d*,"Jog with this punch, then set; check again after grinding\./,
    same: (stamp) => [['bay a', 'PUNCH', '9.525 mm', stamp]],
  },
  {
    name: 'STROKETIME',
    given: (stamp) => ['Bay A', 'punch', '3/8', stamp],
    value: /^"Not checked: Approach speed, Press speed and Return speed of Bay A are not given\."$/,
    same: (stamp) => [['Bay A', 'Punch', 0.375, stamp]],
  },
  {
    name: 'MITERKERF',
    given: () => ['1/8', 45],
    value: 0.1768,
    same: () => [['3.175 mm', '45°', 'in']],
  },
  {
    name: 'MITERSHORT',
    given: () => [36, 'L3X2X1/4', 45],
    value: 33,
    same: () => [[`3'-0`, 'FB 1/4x3', '45', 'in', 0]],
  },
  {
    name: 'CUTLENGTH',
    given: () => [36, 'L3X2X1/4', 45],
    value: 36,
    same: () => [['914.4 mm', 'FB 1/4x3', '45', 'in', 0, null]],
  },
  {
    name: 'FRAMECUTS',
    given: () => [48, 30.5, 'L3X2X1/4'],
    value: /\["sides",2,30\.5,24\.5,45,45,"both","left end up, right end down",30\.5,""\]/,
    same: () => [[`4'-0`, `2'-6 1/2"`, 'L3X2X1/4"', 'in', 'IN', null]],
  },
  {
    name: 'STOCKPLAN',
    // Counted by hand: three pieces of 5 ft and two kerfs in a bar of 20 ft, a fourth does not fit.
    given: () => [[[60, 8]], [[240]], 'in', '1/8'],
    value: /\[3,720,"Total, proven: no plan buys less\. No trim and grip given: 0 taken\."/,
    same: () => [
      [
        [
          ['Qty', 'Length'],
          ['8', `5'-0`],
        ],
        [['Length'], ['20 ft']],
        'IN',
        0.125,
      ],
    ],
  },
  {
    name: 'STOCKBARS',
    given: () => [[[60, 8]], [[240]], 'in', '1/8'],
    value: 3,
    same: () => [[[['1524 mm', 8]], [['20 ft']], 'in', '3.175 mm']],
  },
  {
    name: 'WORKING',
    given: () => ['PUNCHFORCE', '13/16', '3/8', 'A36'],
    value: /^\[\["Step",.*"Punching force",/,
    same: () => [['tonrow.punchforce', 0.8125, '3/8', 'A36']],
  },
];

/** What is wrong with one argument: what stands in it, what the message quotes, and with which error. */
export interface BadValue {
  given: HostArgument;
  /** How the message says what was read. */
  received: string | RegExp;
  code: '#VALUE!' | '#N/A';
  /** Bad only where the argument must be given. */
  blank?: true;
}

const unreadable = (given: HostArgument, received: string | RegExp = `'${String(given)}'`): BadValue => ({
  given,
  received,
  code: '#VALUE!',
});
const notFound = (given: string): BadValue => ({ given, received: `'${given}'`, code: '#N/A' });
const errorCell = { given: { error: '#DIV/0!' }, received: 'error #DIV/0!', code: '#VALUE!' } as const;
const blanks = ['', null].map((given) => ({
  ...unreadable(given, 'the cell is blank'),
  blank: true as const,
}));
const sizes = [
  unreadable('3/8 inc'),
  unreadable(-1, '-1'),
  unreadable(1e9, '1000000000'),
  unreadable(true, 'TRUE'),
];

/** Bad input by the kind of an argument. A kind that is missing here fails the test of its functions. */
export const badValues: Record<string, readonly BadValue[]> = {
  hole: [...sizes, ...blanks, errorCell, unreadable('2-1/4'), unreadable('4-13/16Ø'), unreadable('oval 1x2')],
  length: [
    ...sizes,
    ...blanks,
    errorCell,
    unreadable('1,500', /1\.5 or 1500/),
    unreadable('2-6', /2 ft 6 in/),
  ],
  grade: [
    ...blanks,
    errorCell,
    notFound('A3x6'),
    unreadable('310 MPa'),
    unreadable(-3, '-3'),
    unreadable(true, 'TRUE'),
  ],
  section: [
    ...blanks,
    errorCell,
    unreadable('abc'),
    unreadable('HSS4X4X1/4'),
    notFound('C9X99'),
    unreadable(12, '12'),
  ],
  'any section': [
    ...blanks,
    errorCell,
    unreadable('abc'),
    unreadable('UBP 203x203x45'),
    unreadable('HSS4X4'),
    notFound('C9X99'),
    unreadable(12, '12'),
  ],
  'mitered section': [
    ...blanks,
    errorCell,
    unreadable('abc'),
    unreadable('C8X11.5', 'C8X11.5'),
    unreadable('HSS4X2X1/4', 'HSS4X2X1/4'),
    notFound('C9X99'),
  ],
  bolt: [...blanks, errorCell, unreadable('M'), unreadable('abc'), unreadable(-1, '-1')],
  text: [...blanks, errorCell],
  count: [errorCell, unreadable('two'), unreadable(1.5, '1.5'), unreadable(100, '100')],
  'hole count': [
    ...blanks,
    errorCell,
    unreadable('two'),
    unreadable(1.5, '1.5'),
    unreadable(-2, '-2'),
    unreadable(1001, '1001'),
  ],
  'full angle': [errorCell, unreadable('steep'), unreadable(-1, '-1'), unreadable(361, '361')],
  'angle to either side': [errorCell, unreadable('steep'), unreadable(-89, '-89'), unreadable(89, '89')],
  angle: [errorCell, unreadable('steep'), unreadable(-1, '-1'), unreadable(89, '89')],
  choice: [unreadable('purple')],
  items: [errorCell, unreadable('color', `'color'`), unreadable('verdict, color', `'color'`)],
  shop: [
    errorCell,
    unreadable('mm', `'mm'`),
    unreadable('my shop'),
    unreadable(null, 'a blank cell'),
    unreadable(7, '7'),
  ],
  'shop or unit': [errorCell, unreadable('cm'), unreadable('my shop'), unreadable(7, '7')],
};
