import { Button, Input, Subtitle2, Text } from '@fluentui/react-components';
import { useMemo } from 'react';
import { InputError } from '../../../core/inputError.js';
import { findGrade } from '../../../core/material/findGrade.js';
import type { Grade } from '../../../core/material/grade.js';
import type { Press } from '../../../core/press/press.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { capacitySheet } from '../../../drawing/capacity/sheet/capacitySheet.js';
import { capacityPage } from '../../../print/capacity/capacityPage.js';
import { capacityStyle } from '../../../print/capacity/capacityStyle.js';
import type { Workbook } from '../../../workbook/port.js';
import { PrintedPage } from '../../shared/print/PrintedPage.js';
import { today } from '../../shared/today.js';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import { stack } from '../../shared/stack.js';
import { useKept } from '../../shared/useKept.js';

const usualGrades: Record<LengthUnit, readonly string[]> = {
  in: ['A36', 'A572-50', '304'],
  mm: ['S235', 'S275', 'S355'],
};
const mostGrades = 5;

interface Props {
  workbook: Workbook;
  shop: Shop;
  press: Press;
  onClose: () => void;
}

/** The capacity sheet of a press, to print, for the grades that are asked for. */
export function CapacitySheetPanel({ workbook, shop, press, onClose }: Props) {
  const { value: typed, set: setTyped } = useKept('grades of the capacity sheet', () => gradesOf(shop));
  const read = useMemo(() => readGrades(typed, shop), [typed, shop]);
  const pages = useMemo(() => {
    if (typeof read === 'string') return undefined;
    const sheet = capacitySheet(press, shop, read);
    const head = { unit: shop.unit, stamp: shop.stamp, date: today() };
    return { page: capacityPage(sheet, head), shown: capacityPage(sheet, head, '') };
  }, [read, press, shop]);
  return (
    <section aria-label={`Capacity sheet of ${shortText(press.name)}`} style={stack(12)}>
      <div style={{ display: 'flex', justifyContent: 'space-between', alignItems: 'center', gap: 8 }}>
        <Subtitle2 as="h2" style={{ margin: 0 }}>
          What {shortText(press.name, 30)} can do
        </Subtitle2>
        <Button onClick={onClose}>All presses</Button>
      </div>
      <PaneField
        label="Grades, with a comma between them"
        {...(typeof read === 'string' ? { validationMessage: read, validationState: 'error' as const } : {})}
      >
        <Input value={typed} onChange={(_, { value }) => setTyped(value)} />
      </PaneField>
      {pages ? (
        <PrintedPage
          {...{ workbook, ...pages }}
          name="Capacity sheet"
          file="capacity.html"
          sheet="Capacity"
          style={capacityStyle}
        />
      ) : (
        <Text>Correct the grades to see the sheet.</Text>
      )}
    </section>
  );
}

/** The usual grades, and after them the shop's own. */
function gradesOf({ grades, unit }: Shop): string {
  const own = grades.map(({ name }) => name);
  return [...new Set([...usualGrades[unit], ...own])].slice(0, mostGrades).join(', ');
}

/** The grades by their names, or why they cannot be read. */
function readGrades(typed: string, shop: Shop): Grade[] | string {
  const names = typed.split(',').flatMap((name) => name.trim() || []);
  if (names.length === 0) return 'Give at least one grade.';
  if (names.length > mostGrades) return `A page has room for ${mostGrades} grades.`;
  try {
    return names.map((name) => findGrade(name, 'Grade', shop.grades));
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}
