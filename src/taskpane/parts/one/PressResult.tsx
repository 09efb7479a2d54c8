import { makeStyles, Text, tokens } from '@fluentui/react-components';
import { hardestOf } from '../../../core/check/severity.js';
import type { Finding } from '../../../core/check/finding.js';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { CheckedRow } from '../../../core/row/rowResult.js';
import type { RowWorkResult } from '../../../core/work/workOnRow.js';
import { sentencesOf } from '../../../core/say/sentencesOf.js';
import { governs } from '../../../core/say/say.js';
import { shortText } from '../../shared/shortText.js';
import { WholeSizes } from '../../shared/WholeSizes.js';
import { VerdictWord } from '../../shared/VerdictMark.js';
import { WorkText } from '../../shared/WorkText.js';
import { inventedNotice } from '../../shop/sheet/starter.js';
import { neededOf } from './needed.js';
import { percentText } from '../../../core/quantity/percentText.js';
import { ShareBar } from './ShareBar.js';
import { StillNeeded } from './StillNeeded.js';
import { isAmong } from './unreadInputs.js';

const useStyles = makeStyles({
  result: {
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    padding: '8px 12px',
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr)',
    gap: '4px',
    alignContent: 'start',
  },
  head: { display: 'flex', justifyContent: 'space-between', gap: '8px', flexWrap: 'wrap' },
  share: { display: 'flex', gap: '8px', alignItems: 'center', flexWrap: 'wrap' },
  findings: { margin: 0, paddingInlineStart: '18px' },
});

interface Props {
  press: string;
  result: CheckedRow;
  work: RowWorkResult;
  unit: LengthUnit;
  /** What amounts are in; empty where the shop does not say. */
  currency: string;
  /** What cannot be read of the part, told once above: with it, no share of a rating means anything. */
  unread: readonly Finding[];
  /** The numbers of the press are invented. */
  isInvented: boolean;
  /** Leads to the field of a value of the press; left out where there is none. */
  goToItem?: (key: PressItemKey) => void;
  /** Leads to the field of a cell of the part. */
  goToCell: (heading: string) => void;
}

/** What one press says to a part: the verdict, the share of its rating, and every reason. */
export function PressResult(props: Props) {
  const { press, result, work, unit, currency, unread, isInvented, goToItem, goToCell } = props;
  const styles = useStyles();
  const { verdict, deciding, findings } = result;
  const isRead = unread.length === 0;
  const hardest = isRead ? hardestOf(findings) : undefined;
  const decidedBy = isRead && deciding && verdict !== 'Not checked' ? governs(deciding, unit) : '';
  const shareOf = hardest ? governs(hardest, unit) : '';
  const needed = neededOf(findings);
  const reasons = sentencesOf(
    findings.filter(
      (finding) => !isAmong(unread, finding) && (goToItem === undefined || finding.rule !== 'blank item'),
    ),
    unit,
  );
  return (
    <section className={styles.result} aria-label={`${shortText(press)}: ${verdict}`}>
      <div className={styles.head}>
        <Text as="h2" size={300} weight="semibold" style={{ margin: 0 }}>
          {shortText(press)}
        </Text>
        <VerdictWord verdict={verdict} />
      </div>
      {isInvented && <Text weight="semibold">{inventedNotice}</Text>}
      {isRead && <StillNeeded {...{ verdict, needed, goToItem, goToCell }} />}
      {decidedBy !== '' && <Text>Limited by {shortText(decidedBy)}</Text>}
      {hardest && (
        <div className={styles.share}>
          <ShareBar share={hardest.use} />
          <Text>
            {percentText(hardest.use)} of rating
            {shareOf !== decidedBy && ` for ${shortText(shareOf)}`}
          </Text>
        </div>
      )}
      {reasons.length > 0 && (
        <ul className={styles.findings}>
          {reasons.map((reason) => (
            <li key={reason}>
              <WholeSizes text={shortText(reason, 300)} />
            </li>
          ))}
        </ul>
      )}
      {isRead && <WorkText work={work} currency={currency} />}
    </section>
  );
}
