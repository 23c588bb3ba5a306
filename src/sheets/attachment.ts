/** A file that travels inside a package. */
export interface Attachment {
  readonly name: string
  readonly bytes: Uint8Array
  /** Media type, as `text/markdown`. */
  readonly mime: string
  /** What the file is to the document (ISO 32000-2, 7.11.3): what it was made from, or data shown in it. */
  readonly relationship: 'Source' | 'Data' | 'Supplement' | 'Alternative' | 'Unspecified'
  readonly description: string
}
