import { workbookContract } from '../../workbook/contract/contract.js';
import { openGrid } from '../support/gridUnderTest.js';

workbookContract('the workbook in the grid', openGrid);
