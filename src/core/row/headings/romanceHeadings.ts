import type { GroupField, RowField } from './heading.js';

/** What French and Spanish lists call the columns, with commas between: common practice, no source. */
export const romanceHeadings: Partial<Record<RowField | GroupField, string>> = {
  mark: 'repère, repere, marca, posición',
  drawing: 'dessin, plano',
  qty: 'quantité, quantite, qté, qte, cantidad, cant, uds, nb pièces, nombre de pièces',
  section: 'perfil, profilé',
  grade: 'nuance, acier, acero, calidad',
  length: 'longueur, longitud, largo',
  thickness: 'épaisseur, epaisseur, ép, espesor',
  width: 'largeur, ancho, anchura',
  miterLeft: 'coupe gauche, inglete izquierdo',
  miterRight: 'coupe droite, inglete derecho',
  notchWidth: 'largeur grugeage',
  notchDepth: 'profondeur grugeage',
  finish: 'finition, acabado',
  press: 'prensa, máquina, maquina',
  hole: 'trou, diamètre trou, agujero, diámetro agujero, taladro',
  holes: 'nb trous, nombre de trous, trous, agujeros, nº agujeros, número de agujeros',
  bolt: 'boulon, tornillo, perno',
  edge: 'pince transversale, distancia lateral',
  end: 'pince longitudinale, distancia al extremo',
  pitch: 'entraxe, paso',
  gage: 'trusquinage, gramil',
  leg: 'aile, ala',
};
