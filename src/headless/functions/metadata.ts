/** A parameter in the custom-functions metadata. */
export interface ParameterMetadata {
  name: string;
  description?: string;
  type?: string;
  dimensionality?: 'scalar' | 'matrix';
  optional?: boolean;
  repeating?: boolean;
}

/** A function in the custom-functions metadata. */
export interface FunctionMetadata {
  id: string;
  name: string;
  description?: string;
  parameters: ParameterMetadata[];
  result?: { type?: string; dimensionality?: 'scalar' | 'matrix' };
  options?: Record<string, unknown>;
}

/** The custom-functions metadata file, `functions.json`. */
export interface FunctionsMetadata {
  allowErrorForDataTypeAny?: boolean;
  allowCustomDataForDataTypeAny?: boolean;
  functions: FunctionMetadata[];
}
