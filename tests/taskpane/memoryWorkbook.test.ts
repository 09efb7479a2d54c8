import { workbookContract } from '../workbook/contract/contract.js';
import { openMemory } from './support/memoryUnderTest.js';

workbookContract('the workbook in memory', openMemory);
