/** A PDF value as plain data. Strings and names hold one character a byte (Latin-1), already unescaped. */
export type PdfValue =
  | null
  | boolean
  | number
  | PdfName
  | PdfString
  | PdfReference
  | PdfDictionary
  | readonly PdfValue[]

export interface PdfName {
  readonly kind: 'name'
  readonly name: string
}

export interface PdfString {
  readonly kind: 'string'
  readonly bytes: string
}

export interface PdfReference {
  readonly kind: 'reference'
  readonly object: number
}

export interface PdfDictionary {
  readonly kind: 'dictionary'
  readonly entries: ReadonlyMap<string, PdfValue>
}

/** Returns a name, given without its slash. */
export function pdfName(name: string): PdfName {
  return { kind: 'name', name }
}

/** Returns a reference to an object. */
export function pdfReference(object: number): PdfReference {
  return { kind: 'reference', object }
}

/** Returns a dictionary, its keys given without their slashes. */
export function pdfDictionary(entries: Readonly<Record<string, PdfValue>>): PdfDictionary {
  return { kind: 'dictionary', entries: new Map(Object.entries(entries)) }
}

/** Whether a value is a name. */
export function isName(value: PdfValue | undefined): value is PdfName {
  return hasKind(value, 'name')
}

/** Whether a value is a reference to an object. */
export function isReference(value: PdfValue | undefined): value is PdfReference {
  return hasKind(value, 'reference')
}

/** Whether a value is a dictionary. */
export function isDictionary(value: PdfValue | undefined): value is PdfDictionary {
  return hasKind(value, 'dictionary')
}

function hasKind(value: PdfValue | undefined, kind: string): boolean {
  return typeof value === 'object' && value !== null && 'kind' in value && value.kind === kind
}
