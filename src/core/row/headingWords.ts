import type { GroupField, RowField } from './heading.js';

/**
 * What German, French and Spanish lists call the columns, besides the English names: common practice, no source. A word
 * that may mean two of them is not here.
 */
export const foreignHeadings: Partial<Record<RowField | GroupField, readonly string[]>> = {
  mark: [
    'pos',
    'pos nr',
    'positionsnummer',
    'bauteil',
    'teil',
    'marke',
    'repère',
    'repere',
    'marca',
    'posición',
  ],
  drawing: ['zeichnung', 'zeichnungsnr', 'zeichnungs-nr', 'dessin', 'plano'],
  qty: [
    ...[
      'stk',
      'stück',
      'stückzahl',
      'stueck',
      'stueckzahl',
      'anzahl',
      'menge',
      'quantité',
      'quantite',
      'qté',
      'qte',
    ],
    ...['cantidad', 'cant', 'uds', 'nb pièces', 'nombre de pièces'],
  ],
  section: ['profil', 'querschnitt', 'perfil', 'profilé'],
  grade: [
    'werkstoff',
    'güte',
    'stahlsorte',
    'stahlgüte',
    'material/güte',
    'nuance',
    'acier',
    'acero',
    'calidad',
  ],
  length: ['länge', 'laenge', 'longueur', 'longitud', 'largo', 'zuschnitt', 'zuschnittlänge'],
  thickness: ['dicke', 'blechdicke', 'épaisseur', 'epaisseur', 'ép', 'espesor'],
  width: ['breite', 'largeur', 'ancho', 'anchura'],
  miterLeft: ['gehrung links', 'coupe gauche', 'inglete izquierdo'],
  miterRight: ['gehrung rechts', 'coupe droite', 'inglete derecho'],
  notchWidth: ['ausklinkung breite', 'largeur grugeage'],
  notchDepth: ['ausklinkung tiefe', 'profondeur grugeage'],
  finish: ['oberfläche', 'oberflaeche', 'beschichtung', 'finition', 'acabado'],
  press: ['maschine', 'presse', 'prensa', 'máquina', 'maquina'],
  hole: [
    'bohrung',
    'loch',
    'loch ø',
    'lochdurchmesser',
    'trou',
    'diamètre trou',
    'agujero',
    'diámetro agujero',
    'taladro',
  ],
  holes: [
    ...[
      'anzahl löcher',
      'anzahl bohrungen',
      'löcher',
      'bohrungen',
      'nb trous',
      'nombre de trous',
      'trous',
      'agujeros',
    ],
    ...['nº agujeros', 'número de agujeros'],
  ],
  bolt: ['schraube', 'schraubengröße', 'schraubengrösse', 'schraubengroesse', 'boulon', 'tornillo', 'perno'],
  edge: ['seitenabstand', 'randabstand quer', 'pince transversale', 'distancia lateral'],
  end: ['endabstand', 'randabstand längs', 'pince longitudinale', 'distancia al extremo'],
  pitch: ['lochabstand', 'teilung', 'entraxe', 'paso'],
  gage: ['wurzelmaß', 'wurzelmass', 'anreißmaß', 'anreissmass', 'trusquinage', 'gramil'],
  leg: ['schenkel', 'aile', 'ala'],
};

/** Symbols of EN 1993-1-8, Figure 3.1, and of its clauses: along the force the end and the pitch, across it the edge. */
export const symbols: Readonly<Record<string, RowField | GroupField>> = {
  e1: 'end',
  e2: 'edge',
  p1: 'pitch',
  p2: 'gage',
  d0: 'hole',
};

/** Letters that mean something beside such symbols only. */
export const lettersBesideSymbols: Readonly<Record<string, RowField | GroupField>> = {
  n: 'holes',
  w: 'gage',
  w1: 'gage',
  d: 'bolt',
};

/** Letters of a plate's two sizes, which mean them together. */
export const plateLetters = { t: 'thickness', b: 'width', w: 'width' } as const;

/** The words and symbols besides the English ones that name a column. */
export function otherHeadings(field: RowField | GroupField): string[] {
  const letters = Object.entries({ ...symbols, ...lettersBesideSymbols, ...plateLetters });
  return [
    ...(foreignHeadings[field] ?? []),
    ...letters.filter(([, each]) => each === field).map(([letter]) => letter),
  ];
}
