import { useEffect, useMemo, useState } from 'react';
import type { WorkedCall } from './functionWorkings.js';
import type { Subject } from './subject.js';
import { workedCall } from './worked.js';

/** The working of a call, or a sentence: why there is none, or that it is still being made. */
export function useWorkedCall(subject: Extract<Subject, { kind: 'call' }>): WorkedCall | string {
  const worked = useMemo(() => workedCall(subject), [subject]);
  const [later, setLater] = useState<{ of: typeof worked; is: WorkedCall | string }>();
  useEffect(() => {
    if (!(worked instanceof Promise)) return;
    let isWanted = true;
    void worked.then((is) => isWanted && setLater({ of: worked, is }));
    return () => {
      isWanted = false;
    };
  }, [worked]);
  if (!(worked instanceof Promise)) return worked;
  return later?.of === worked ? later.is : 'Working it out …';
}
