import type { StoredValue } from '../../../src/sheet/cellValue.js';

/** Calls that the referee computes otherwise, with what the host gives and what decides it. */
export interface Difference {
  /** Why the referee's value does not count. */
  reason: string;
  values: Readonly<Record<string, StoredValue>>;
}

const error = (code: string) => ({ error: code });

/*
 * "documentation" is the host's page on the function; none of its values was seen in a host.
 */
export const differences: readonly Difference[] = [
  {
    reason: 'documentation: logical values and text representations of numbers typed directly are counted',
    values: {
      'SUM("3",C2,10)': 1263,
      'SUM(B2:B13,"3",10)': 84,
      'SUM(B2:B13,C2,"3")': 1324,
      'PRODUCT("3",2)': 6,
      'PRODUCT(B2:B4,"3")': 84,
      'AVERAGE("3",100)': 51.5,
      'AVERAGE(C2:C5,"3")': 1990.5,
      'MIN("3",-5)': -5,
      'MIN(B2:B13,"3")': 1,
      'MAX("3")': 3,
      'MEDIAN("3")': 3,
      'SUMSQ("3",3)': 18,
      'SUMSQ(B2,"3")': 25,
      'NPV(0.1,"3")': 3 / 1.1,
      'STDEV("3")': error('#DIV/0!'),
      'STDEV.S("3")': error('#DIV/0!'),
      'STDEV.P("3")': 0,
      'STDEVP("3")': 0,
      'VAR("3")': error('#DIV/0!'),
      'VAR.S("3")': error('#DIV/0!'),
      'VAR.P("3")': 0,
    },
  },
  {
    reason: 'a text that is a number stands for it where a number is asked for (ECMA-376 part 1, 18.17.2.6)',
    values: { 'LARGE(B2:B13,"3")': 9, 'SMALL(D2:D13,"3")': 3.1 },
  },
  {
    reason:
      'truth values are a type of their own (ECMA-376 part 1, 18.17.2.1); the referee has the number 1 for TRUE',
    values: {
      'COUNTIFS(E2:E13,"PL",B2:B13,TRUE)': 0,
      'AVERAGEIFS(D2:D13,E2:E13,"PL",B2:B13,TRUE)': error('#DIV/0!'),
      'MINIFS(D2:D13,E2:E13,"PL",B2:B13,TRUE)': 0,
      'ISNUMBER(TRUE)': false,
      'LEFT(TRUE,1)': 'T',
      'RIGHT(TRUE,3)': 'RUE',
      'MID(TRUE,2,2)': 'RU',
      'LEN(TRUE)': 4,
      'UPPER(TRUE)': 'TRUE',
      'LOWER(TRUE)': 'true',
      'PROPER(TRUE)': 'True',
      'TRIM(TRUE)': 'TRUE',
      'CLEAN(TRUE)': 'TRUE',
      'CONCATENATE(TRUE,B2,"c")': 'TRUE4c',
      'CONCATENATE("a",TRUE,"c")': 'aTRUEc',
      'CONCATENATE("a",B2,TRUE)': 'a4TRUE',
      'CONCAT(TRUE,B2,"c")': 'TRUE4c',
      'CONCAT("a",TRUE,"c")': 'aTRUEc',
      'CONCAT("a",B2,TRUE)': 'a4TRUE',
      'TEXTJOIN(TRUE,TRUE,H2:H6)': 'hold for drawingTRUEhot dipTRUEhold',
      'TEXTJOIN(", ",TRUE,TRUE)': 'TRUE',
      'SUBSTITUTE(TRUE,"-","+",2)': 'TRUE',
      'SUBSTITUTE("a-b-c","-",TRUE,2)': 'a-bTRUEc',
      'REPLACE(TRUE,2,3,"X")': 'TX',
      'REPLACE("abcdef",2,3,TRUE)': 'aTRUEef',
    },
  },
  {
    reason: 'documentation: the empty text is found at the first character searched',
    values: {
      'FIND("","abc")': 1,
      'FIND(H3,"abc")': 1,
      'SEARCH("","abcb",3)': 3,
      'SEARCH(H3,"abcb",3)': 3,
    },
  },
  {
    reason: 'documentation: a number out of the range of the function is #NUM!',
    values: {
      'LOG10(H3)': error('#NUM!'),
      'LOG10(0)': error('#NUM!'),
      'LOG10(-1)': error('#NUM!'),
      'FACT(-1)': error('#NUM!'),
      'MROUND(-1,3)': error('#NUM!'),
      'MROUND(7,-1)': error('#NUM!'),
    },
  },
  {
    reason: 'a division by 0 is #DIV/0! (ECMA-376 part 1, 18.17.2.1)',
    values: { 'QUOTIENT(17,H3)': error('#DIV/0!'), 'QUOTIENT(17,0)': error('#DIV/0!') },
  },
  {
    reason: 'a value that is not found is #N/A',
    values: {
      'RANK(H3,B2:B13,1)': error('#N/A'),
      'RANK(0,B2:B13,1)': error('#N/A'),
      'RANK(-1,B2:B13,1)': error('#N/A'),
      'RANK(2.7,B2:B13,1)': error('#N/A'),
      'RANK(B2,H3,1)': error('#N/A'),
    },
  },
  {
    reason: 'values of unlike types are not equal; the referee refuses to compare them',
    values: { 'SWITCH(0,"PL","plate","FL","flat","other")': 'other' },
  },
];
