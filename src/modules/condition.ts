/** A condition on a choice, on whether an optional input was given, or on numbers. */
export type Condition =
  | { readonly choice: string; readonly is: readonly string[] }
  | { readonly given: string }
  | { readonly formula: string }
