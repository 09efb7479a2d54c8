import { Text } from '@fluentui/react-components';
import { sentenceInCell } from '../../../core/inputError.js';
import { readGrades } from '../../../core/shop/readGrades.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { gradeHeadings } from '../sheet/starter.js';
import { addToList } from './addToList.js';
import type { ListColumn } from './listColumn.js';
import { RowList } from './RowList.js';

const hints: Record<string, string> = {
  'Tensile min': 'with its unit: 58 ksi, 400 MPa',
  'Tensile upper': 'the most the steel may have; forces are computed with it',
  Shear: 'where it is known; else a share of Tensile upper',
  Density: 'lb/ft³ or kg/m³; steel when blank',
  Source: 'mill certificate, standard',
};
const columns: readonly ListColumn[] = gradeHeadings.map((heading) => {
  const hint = hints[heading];
  return hint === undefined ? { heading } : { heading, hint };
});

/** The shop's own grades. */
export function GradeList({ workbook, shop }: ShopPartProps) {
  const { unit } = shop.shop;
  const problem = (values: readonly string[]) => {
    if (values.every((value) => value.trim() === '')) return undefined;
    if (values[0]?.trim() === '') return 'Give the grade a name.';
    const failure = readGrades([gradeHeadings, values], unit).find(
      (own) => own.problem !== undefined,
    )?.problem;
    return failure && sentenceInCell(failure);
  };
  return (
    <>
      <Text>
        Your own grades, or one from a mill certificate. They come before the usual grades, which need no row
        here.
      </Text>
      <RowList
        what="grade"
        columns={columns}
        table={shop.tables.grades}
        problem={problem}
        describe={(value) => `${value('Grade')} · up to ${value('Tensile upper') || value('Shear') || '?'}`}
        add={(values) => addToList(workbook, shop, 'grades', gradeHeadings, values)}
      />
    </>
  );
}
