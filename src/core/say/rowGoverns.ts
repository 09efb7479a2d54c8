import type { RowFinding } from '../check/rowFact.js';
import { governsOf } from '../press/limit.js';
import { cellName } from './cellWords.js';
import { holeTitle } from '../row/job/rowJob.js';

/** What a check of the row compared, in a few words: `edge distance`, `spacing`. */
export function rowGoverns(finding: RowFinding): string {
  switch (finding.rule) {
    case 'distance':
      return distanceWords(finding);
    case 'no press in the shop':
    case 'press not known':
      return 'press';
    case 'work without part':
      return 'work without a part';
    case 'bolt in hole':
    case 'holes in a bar':
    case 'hole over the bar':
    case 'hole in a cut':
      return holeTitle(finding.group);
    case 'not held':
      return notHeldWords[finding.why];
    case 'cut on angle':
      return finding.work;
    case 'hole off the part':
      return holeTitle(finding.group);
    case 'sheared end':
      return 'End kind';
    case 'outline':
      return 'outline';
    case 'work on the part':
      return 'notch';
    case 'corners':
      return 'corner clip';
    case 'bend from edge to edge':
    case 'bend on the part':
    case 'bend off the part':
    case 'bends cross':
      return 'bend';
    case 'room':
      return 'spacing';
    case 'room at the edges':
      return 'edge distance';
    case 'choice':
    case 'too many choices':
      return finding.cells.map(cellName).join(', ');
    case 'blank cell':
      return cellName(finding.cell);
    case 'reach open':
      return governsOf(finding.item);
    case 'station for work':
      return finding.work;
    case 'tool on hand':
      return finding.lacking;
    case 'tool body':
      return governsOf('punchBody');
    case 'off press':
      return '';
  }
}

const notHeldWords = {
  'bend missing': 'bend',
  'bends across each other': 'bend',
  'galvanized and thick': 'galvanizing',
  'cut on a miter': 'cut on a miter',
  'uneven lines': 'lines of holes',
  'loose bolt': 'bolt',
  'unread columns': 'columns',
  'work in a text': 'work in a text',
};

function distanceWords({ kind, between: [, other] }: Extract<RowFinding, { rule: 'distance' }>): string {
  switch (kind) {
    case 'edge by code':
    case 'edge by practice': {
      const isEnd =
        other.is === 'edge' && (other.cause.is.includes('end') || other.cause.is.startsWith('miter'));
      return isEnd ? 'end distance' : 'edge distance';
    }
    case 'heel':
      return 'distance to the heel';
    case 'between cuts':
      return 'steel between cuts';
    case 'hole to bend':
      return 'hole to bend';
    case 'flange':
      return 'flange';
    default:
      return 'spacing';
  }
}
