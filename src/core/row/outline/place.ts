/** A place on the part in mm: along it from the stop, across it from the edge at the throat. */
export interface Place {
  alongMm: number;
  acrossMm: number;
}

/** The long edges of a part as it lies on the press: the far one, the near one. */
export type Side = 'throat' | 'operator';
