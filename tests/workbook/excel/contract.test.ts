import { workbookContract } from '../contract/contract.js';
import { openOffice } from '../support/officeUnderTest.js';

workbookContract('the workbook of the platform, over its own proxy objects', openOffice);
