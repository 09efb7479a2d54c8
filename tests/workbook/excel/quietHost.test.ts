import { workbookContract } from '../contract/contract.js';
import { openQuietOffice } from '../support/officeUnderTest.js';

workbookContract('ExcelWorkbook over a host that tells nothing of its own writes', openQuietOffice);
