/** What the reader takes. Each limit is checked before the work that it bounds, and the message says which was passed. */
export const limits = {
  /** Size of the file in bytes of UTF-8. */
  fileBytes: 2_000_000,
  /** Characters without a blank line. Reading time of one paragraph can grow with the square of its length. */
  paragraph: 20_000,
  /** The same inside what looks like a fence. */
  fence: 200_000,
  /** Quotes, lists and boxes inside each other. */
  nesting: 50,
  /** Brackets inside each other in one paragraph. */
  brackets: 50,
  /** Depth of the tree of the text, in nodes. */
  treeDepth: 250,
  /** Blocks of ours. */
  blocks: 1_000,
  /** Characters in one block, or in the title block. */
  blockSize: 50_000,
  /** Lists and maps inside each other in one block. */
  blockNesting: 20,
  /** Lines of working in one block. */
  statements: 500,
} as const
