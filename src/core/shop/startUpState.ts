/** What the reading of the workbook's shop came to, for whoever explains it to the user. */
export type StartUpState =
  | { state: 'reading' }
  /** The host answers when the cell that is being edited is left. */
  | { state: 'editing' }
  | { state: 'ok'; stamp: string }
  /** The shop is there; what cannot be read in it is in the messages. */
  | { state: 'incomplete'; stamp: string; messages: string[] }
  | { state: StartUpProblem; messages: string[] };

export type StartUpProblem =
  /** The runtime has no workbook, as in a headless run. */
  | 'no workbook'
  | 'no ShopStamp'
  /** The cell ShopStamp holds something else than a SHOP call of plain tables. */
  | 'no SHOP formula'
  /** A table, name or sheet in the SHOP formula does not exist. */
  | 'table missing'
  /** The tables are there but cannot be read as a shop. */
  | 'data unreadable'
  /** The host did not answer as it should. */
  | 'not read';

/** What asking the host for a full calculation came to; by `manual` the user calculates when they like. */
export type Recalculation = 'asked' | 'manual' | 'refused';
