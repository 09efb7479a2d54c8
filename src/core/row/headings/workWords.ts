import { readFinish } from '../read/readFinish.js';

/** What the words of a list name: work of a kind, the finish after it, or nothing but its place. */
export type WorkKind =
  | 'holes'
  | 'drill'
  | 'slots'
  | 'finishing'
  | 'miter'
  | 'notch'
  | 'clip'
  | 'bend'
  | 'cut'
  | 'shape'
  | 'finish'
  | 'stagger'
  | 'fit'
  | 'hand'
  | 'state'
  /** A size, a count, a grade or a note that no cell of the row gives. */
  | 'other';

/**
 * The words that name work on a part, in the languages whose lists are read: the one list of them, for headings and for
 * texts. Without a guard a stem names it anywhere in a word: `Langloch`, `bolthole`. Common practice, no source.
 */
const ofHeadings = {
  holes: '(?<!w|man)hole|loch|(?<!\\p{L})punch|agujero|perçage|(?<!\\p{L})trous?(?!\\p{L})',
  drill: 'drill|bohr|taladro',
  slots: '(?<!\\p{L})slot|langl',
  miter: '(?<!\\p{L})(?:mit(?:er|re)|bevel)|gehrung|schr[äa]g',
  notch: 'notch|(?<!\\p{L})cope[ds]?(?!\\p{L})|cut ?out|ausklink|geklink|muesca|encoche',
  clip: '(?<!\\p{L})clip|fase',
  bend: '(?<!\\p{L})bend|kant|bieg|(?<!\\p{L})pli(?!\\p{L})',
} as const;

/**
 * What a text says that no column of a row can: that the part is forbidden work, not to be made, or made by others; a shape,
 * a hole or other work that none has; and what is still to be found out. Common practice, no source.
 */
const beyondRow = [
  String.raw`void(?:ed)?|deleted?|hold|omit(?:ted)?|cancel(?:l?ed)?|superseded|not (?:required|req'?d|needed|used)|do not (?:use|make|cut|fab\p{L}*|ship)|by (?:others|gc|owner)|n\.?i\.?c|entfällt|vervallen`,
  String.raw`(?:no|not|don'?t) (?:punch|shear|hole)\p{L}*|fcm|sub-?punch\p{L}*|ream(?:ed|ing|s)?`,
  String.raw`layout only|buy-?out|exist(?:ing)?|\(e\)|tb[ad]|t\.b\.d|v\.?i\.?f|verify|governs?|dxf|dim\p{L}* in mm`,
  String.raw`circle|dis[ck]|ring|half moon|triang\p{L}*|trapez\p{L}*|round(?:ed)? (?:end|corner)s?|dog ?leg\p{L}*|crank\p{L}*|offsets?|dished|press ?brake|flanged|[uz][- ]shaped?|curv\p{L}*|arc|spiral|flatten\p{L}*|swag\p{L}*|pinch\p{L}*|scallop\p{L}*|fish ?mouth\p{L}*|saddle\p{L}*|skew\p{L}*|split`,
  String.raw`(?:vent|weep|hand|rat|lifting|jig|extra|add'?l) ?holes?|openings?|penetrations?|perf(?:orat\p{L}*)?|bolt circle|tear ?drop|egg shaped?`,
  String.raw`mill(?:ed)? to bear|machin\p{L}*|j-?groove|[cp]jp|to (?:suit|fit)|(?:\d|two|double)[- ]?ply|per \d+ pcs`,
];

/** What names work in a text; as a heading it may be about something else: `Bent`, `Cut`, `Tapped`. */
const ofTexts: Partial<Record<WorkKind, string>> = {
  holes: '(?<!\\p{L})(?:gat(?:en)?|(?:ge)?pons\\p{L}*)(?!\\p{L})|stanz',
  drill: '(?<!\\p{L})ge(?:bohr|boor)|(?<!\\p{L})bor(?:en|ing(?:en)?)(?!\\p{L})',
  slots: '(?<!\\p{L})(?:oblong|elongated)|sleuf|sleuv|slobgat|(?<!\\p{L})(?:ssl|lsl)(?!\\p{L})',
  miter: '(?<!\\p{L})(?:mtr|verstek)',
  notch: '(?<!\\p{L})coping(?!\\p{L})|inkeping',
  bend: '(?<!\\p{L})(?:bent|bends?|gebogen|gezet|zetting(?:en)?)(?!\\p{L})',
  stagger: 'stagger',
  fit: '(?<!\\p{L})(?:ovs|oversized?|o/?s holes?)(?!\\p{L})',
  hand: String.raw`(?<!\p{L})(?:opp(?:osite)?(?! side)|other hand|mirror(?:ed)?|handed|reversed?|(?:\d ?)?(?:l|r|[lr]h|left|right) ?(?:[&/+, ]|and) ?(?:\d ?)?(?:l|r|[lr]h|left|right)|gespiegel[td]|spiegelbild\p{L}*|seitenverkehrt)(?!\p{L})`,
  state: `(?<!\\p{L})(?:${beyondRow.join('|')})(?!\\p{L})`,
  cut: '(?<!\\p{L})(?:cut|cuts|cutting|saws?|saw-?cut|sawn|sawed|sheared|burn(?:ed|t)?|flame|plasma|laser|torch|water ?jet|gesägt|gebrannt|gezaagd|gebrand)(?!\\p{L})',
};

/** Work beyond the press that a heading only names where a number stands below it. */
export const finishingWords =
  "c'?sk|c/sk|c'?sink|countersunk|countersink|c'?sunk|c/sunk|c'?bore|counterbored?|c/s|cb|spot ?faced?|tap(?:ped)?|thread(?:ed)?|gewinde|senkung";
export const shapeWords =
  'chamfer(?:ed)?|camber(?:ed)?|joggled?|twist(?:ed)?|crimp(?:ed)?|taper(?:ed)?|sniped?|roll(?:ed)?|radius|rad';

const headings = new RegExp(Object.values(ofHeadings).join('|'), 'iu');
const clipped =
  '(?:the |both |each |all |one |two |\\(?\\d\\)? )*(?:corner|end|edge|top|bottom|left|right|\\d+ ?[x/-]|45)';
/** What a part belongs to: a spiral stair is where it goes. */
const building = String.raw`(?:stair|level|room|beam|tower|platform|roof|building|wall|column|steel|frame|bolt)s?(?!\p{L})`;
/** Steel that is called rolled was not rolled in the shop; a clip is a part where none of its corners is named. */
const notWork = new RegExp(
  String.raw`kanten (?:entgrat|gebroch|brech|verrund)\p{L}*|cut (?:to (?:length|size)|from)|mtrs? (?:req\p{L}*|certs?|reports?)|(?:bolts?|anchors?|rods?|grout|paint\p{L}*|erect\p{L}*|weld\p{L}*) by (?:others|gc|owner)|(?:hot|cold|as)[- ]rolled|roll(?:ed)?[- ](?:steel|up)|roll ?formed|(?<!\p{L})cold[- ](?:formed|bent)|(?<!\p{L})(?:exist(?:ing)?|machine|ring|split|spiral|curved|crank(?:ed)?|offset|saddle|skew(?:ed)?) ${building}|(?:to|at|on) exist(?:ing)?(?!\p{L})` +
    `|(?<!corners? )(?<!\\p{L})clips?(?!\\p{L})(?! ?${clipped})`,
  'giu',
);

const ofWord = (words: string) => `(?<!\\p{L})(?:${words})(?!\\p{L})`;
const texts = (
  [
    ['finishing', ofWord(finishingWords)],
    ['shape', ofWord(shapeWords)],
    ...(['cut', 'stagger', 'fit', 'hand', 'state'] as const).map((kind) => [kind, ofTexts[kind]]),
    ...Object.entries(ofHeadings).map(([kind, words]) => [
      kind,
      [words, ofTexts[kind as WorkKind]].join('|'),
    ]),
  ] as [WorkKind, string][]
).map(([kind, words]) => [kind, new RegExp(words.replace(/\|$/, ''), 'iu')] as const);

/** Whether a heading names work: what stands below it must not be dropped. */
export const isWorkHeading = (heading: string): boolean => headings.test(heading);

/** Whether a word, or a text of several, names work, and of which kinds. */
export function workKindsOf(text: string): WorkKind[] {
  const plain = text.replace(notWork, ' ');
  const kinds = texts.flatMap(([kind, words]) => (words.test(plain) ? kind : []));
  return readFinish(plain) === 'galvanized' ? [...kinds, 'finish'] : kinds;
}
