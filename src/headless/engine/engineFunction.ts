import type { Operand } from './values.js';

/** How the engine describes an argument of a function. */
export interface EngineArgument {
  type?: string[];
  optional?: boolean;
  default?: boolean;
  repeating?: boolean;
  acceptMatrix?: boolean;
  acceptMatrixOnly?: boolean;
}

/** How the engine describes a function. */
export interface EngineFunction {
  args: EngineArgument[];
  minArgRequired: number;
  maxArgPossible: number;
  nbrArgRepeating: number;
}

/** A row of what the engine's registry takes to define a function. */
export interface EngineDefinition {
  description: string;
  args: (EngineArgument & { name: string; description: string })[];
  compute: (...args: (Operand | undefined)[]) => Operand;
}
