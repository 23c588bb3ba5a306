import type { FinishOptions } from '../../../src/sheets/pdf/index.ts'

const every = Uint8Array.from({ length: 512 }, (_, index) => index % 256)

/** What the sample package is finished with: names and words outside ASCII, bytes that look like PDF, an empty file. */
export const sampleFinish: FinishOptions = {
  title: 'Skerry Point: toit & “murs” (β)',
  author: 'A. Þórsdóttir',
  language: 'en-GB',
  creator: 'undercroft 0.1.0',
  date: new Date('2026-03-04T05:06:07Z'),
  sha256: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
  attachments: [
    {
      name: 'skerry-point.md',
      bytes: Buffer.from('# Skerry Point\n'),
      mime: 'text/markdown',
      relationship: 'Source',
      description: 'The notebook',
    },
    {
      name: 'résultats.json',
      bytes: Buffer.from('{"β": 1}'),
      mime: 'application/json',
      relationship: 'Data',
      description: 'Résultats',
    },
    {
      name: 'every byte.bin',
      bytes: every,
      mime: 'application/octet-stream',
      relationship: 'Unspecified',
      description: 'endstream endobj',
    },
    {
      name: 'a (1).txt',
      bytes: new Uint8Array(0),
      mime: 'text/plain',
      relationship: 'Supplement',
      description: 'Empty',
    },
  ],
}
