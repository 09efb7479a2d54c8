// Properties are tried on fewer inputs than in a test run: a mutant that lives through these costs all of them. The
// first input that fails is enough: nobody reads a smaller one.
import fc from 'fast-check';

fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 40, endOnFailure: true });
