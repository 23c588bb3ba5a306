import { Document, isSeq, type YAMLMap } from 'yaml'
import { type BlockRecord, type CheckingRecord, type Comment, emptyBlock, type Signed, type Tick } from './record.ts'
import { vouched } from './step-print.ts'

/**
 * The record as YAML. Every block of the notebook has its place, filled or not, in the notebook's order and with a blank line between, so that
 * version control merges two records without conflict where different blocks were ticked. One tick is one line.
 */
export function writeRecord(
  record: CheckingRecord,
  { notebook, blocks }: { notebook: string; blocks: readonly string[] },
): string {
  const gone = [...record.keys()].filter(name => !blocks.includes(name) && !isEmpty(record.get(name)))
  const parts = [...blocks, ...gone].map(name => blockText(name, record.get(name) ?? emptyBlock))
  return [head(notebook), ...parts].join('\n')
}

const head = (notebook: string): string =>
  `# Checking record of ${notebook}, kept by \`undercroft tick\`.\n# A tick stands while formula, source, inputs and result of its step are printed as they were.\n`

const isEmpty = (block: BlockRecord | undefined): boolean =>
  !block || (block.ticks.length === 0 && block.comments.length === 0)

function blockText(name: string, block: BlockRecord): string {
  const entries = [...block.ticks.map(tickData), ...block.comments.map(commentData)]
  const document = new Document({ [name]: entries.length > 0 ? entries : null })
  const list = document.get(name, true)
  if (isSeq(list)) for (const item of list.items as YAMLMap[]) item.flow = item.has('step')
  return document.toString({ lineWidth: 0, nullStr: '', flowCollectionPadding: true }).replace(/[ \t]+$/gm, '')
}

const tickData = ({ step, by, on, as, of }: Tick) => ({ step, by, on, as, of: vouched.map(part => of[part]).join(' ') })

const commentData = ({ step, by, on, says, settled }: Comment) => ({
  comment: step,
  by,
  on,
  says,
  ...(settled ? { settled: signedData(settled) } : {}),
})

const signedData = ({ by, on, says }: Signed & { says: string }) => ({ by, on, says })
