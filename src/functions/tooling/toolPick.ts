import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import { toolsForHole } from '../../core/row/toolsForHole.js';
import { sentencesOf } from '../../core/say/sentencesOf.js';
import { findPress } from '../../core/shop/findPress.js';
import { toolText } from '../../core/shop/toolText.js';
import { lengthValue, textValue } from '../../core/working/namedValue.js';
import { lengthArgument } from '../argument/length.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { gradeArgument, holeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

/** What stands in place of a tool that is not known, since the shop keeps no list. */
export const noListOfTools = 'The shop has no Tools table, so its tools are not known.';

export const toolPick = define({
  name: 'TOOLPICK',
  purpose: 'The punch and the die for a hole, of those on hand, and the clearance between them',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    hole: holeArgument(),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopArgument,
  },
  result: 'cells',
  gives:
    'Four cells side by side: punch and die as they stand in the Tools table, their total clearance in in or mm, and the holder of the punch. Else the verdict word and why.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a press cell that cannot be read.',
  source: 'the Tools table of the shop; common practice, no source',
  example: '=TONROW.TOOLPICK("Bay A","13/16","3/8","A36",ShopStamp)',
  compute({ press, hole, thickness, grade, shop }, { unit }, working) {
    const tools = toolsForHole(findPress(press, 'Press', shop), hole.hole, thickness, grade, shop, working);
    const cells = shown();
    const values =
      tools.is === 'picked'
        ? [
            textValue('die', 'die picked', toolText(tools.die, unit)),
            lengthValue('c', 'clearance of the two, both sides', tools.clearanceMm),
          ]
        : [];
    working?.step({
      title: 'Tools picked',
      formula: 'the punch of the size; the die nearest to the clearance wanted',
      values,
      result: textValue('punch', 'punch picked, or the word of what stops it', String(cells[0])),
      source: 'the Tools table of the shop',
    });
    return [cells];

    function shown(): CellValue[] {
      switch (tools.is) {
        case 'picked': {
          const { punch, die, clearanceMm } = tools;
          const clearance = inShopUnit(clearanceMm, 'length', unit);
          return [toolText(punch, unit), toolText(die, unit), clearance, punch.holder ?? ''];
        }
        case 'stopped':
          return [tools.finding.verdict, sentencesOf([tools.finding], unit).join(' '), '', ''];
        case 'no list of tools':
          return ['Not checked', noListOfTools, '', ''];
      }
    }
  },
});
