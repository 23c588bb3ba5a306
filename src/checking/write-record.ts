import { Document, isSeq, type Node, type YAMLMap } from 'yaml'
import { asYaml, headLines } from './own-remarks.ts'
import {
  aboveAll,
  type BlockRecord,
  type CheckingRecord,
  type Comment,
  emptyBlock,
  type Signed,
  type Tick,
} from './record.ts'
import { vouched } from './vouched.ts'

/**
 * The record as YAML. Every block of the notebook has its place, filled or not, in the notebook's order and with a blank line between, so that
 * version control merges two records without conflict where different blocks were ticked. One tick is one line.
 */
export function writeRecord(
  record: CheckingRecord,
  { notebook, blocks }: { notebook: string; blocks: readonly string[] },
): string {
  const gone = [...record.keys()].filter(
    name => name !== aboveAll && !blocks.includes(name) && !isEmpty(record.get(name)),
  )
  const parts = [...blocks, ...gone].map(name => blockText(name, record.get(name) ?? emptyBlock))
  const head = [...headLines(notebook), ...(record.get(aboveAll)?.remarks ?? [])].map(line => `# ${line}\n`)
  return [head.join(''), ...parts].join('\n')
}

const isEmpty = (block: BlockRecord | undefined): boolean =>
  !block || (block.ticks.length === 0 && block.comments.length === 0 && !block.remarks)

function blockText(name: string, block: BlockRecord): string {
  const entries = [...block.ticks, ...block.comments]
  const data = [...block.ticks.map(tickData), ...block.comments.map(commentData)]
  const document = new Document({ [name]: data.length > 0 ? data : null })
  const list = document.get(name, true)
  if (isSeq(list))
    (list.items as YAMLMap[]).forEach((item, index) => {
      item.flow = item.has('step')
      remark(item, 'commentBefore', entries[index]?.remarks)
    })
  remark(list as Node, 'comment', block.remarks)
  return document.toString({ lineWidth: 0, nullStr: '', flowCollectionPadding: true }).replace(/[ \t]+$/gm, '')
}

function remark(node: Node, place: 'comment' | 'commentBefore', remarks: readonly string[] | undefined): void {
  const text = asYaml(remarks)
  if (text !== undefined) node[place] = text
}

const tickData = ({ step, row, from, by, on, as, of }: Tick) => ({
  step,
  ...(row === undefined ? {} : { row }),
  ...(from === undefined ? {} : { from }),
  by,
  on,
  as,
  of: vouched.map(part => of[part]).join(' '),
})

const commentData = ({ step, row, by, on, says, settled }: Comment) => ({
  comment: step,
  ...(row === undefined ? {} : { row }),
  by,
  on,
  says,
  ...(settled ? { settled: signedData(settled) } : {}),
})

const signedData = ({ by, on, says }: Signed & { says: string }) => ({ by, on, says })
