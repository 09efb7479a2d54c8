// Properties are tried on fewer inputs than in a test run: a mutant that lives through these costs all of them.
import fc from 'fast-check';

fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 40 });
