/** A beam of the tables, or a tee cut from one. */
export interface BeamSection {
  kind: 'beam';
  designation: string;
  name: string;
  standard: 'AISC' | 'EN 10365';
  form: 'I' | 'tee';
  /** Over all. */
  depthMm: number;
  flangeWidthMm: number;
  webThicknessMm: number;
  flangeThicknessMm: number;
  /** 0 where the table gives none. */
  rootRadiusMm: number;
  areaMm2: number;
  /** Of steel. */
  massKgPerM: number;
}
