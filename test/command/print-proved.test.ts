import { resolve } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { TextOptions } from '../../src/command/early-model.ts'
import { evaluateFile } from '../../src/command/evaluated.ts'
import { lateModel, lateModelInTurns } from '../../src/command/late-model.ts'
import { expectPackage, provePackage } from '../../src/command/package-texts.ts'
import { type PrintJob, printPdf } from '../../src/command/print-pdf.ts'
import { printProved } from '../../src/command/print-proved.ts'
import { assets } from '../../src/sheets/assets.ts'
import { expectedCount } from '../../src/sheets/expected-count.ts'
import type { OpenBrowser } from '../../src/sheets/pdf/index.ts'
import { wholePrint } from '../sheets/whole-print.ts'

vi.mock('../../src/command/print-pdf.ts')
vi.mock('../../src/sheets/expected-count.ts', { spy: true })

const identity = { name: 'Browser', version: '1', pinned: true, sandboxed: true }
const browser = { ok: true, browser: identity } as OpenBrowser
const failure = { ok: false, reason: 'print-failed', says: 'no', help: 'none' } as const

/** What was handed to the printer, in order; its `meanwhile` is called where there is one. */
let printed: string[] = []
let answer: Awaited<ReturnType<typeof printPdf>>

beforeEach(() => {
  printed = []
  answer = { ok: true, pdf: Uint8Array.of(1), pages: 2, scale: 1 }
  vi.mocked(expectedCount).mockReset()
  vi.mocked(printPdf).mockImplementation(async (_, { print }, { meanwhile }) => {
    const parts = await Promise.all(print.map(async part => (typeof part === 'string' ? part : part())))
    printed.push(wholePrint(parts))
    meanwhile?.()
    return answer
  })
})

async function issued(signal?: AbortSignal) {
  const evaluated = await evaluateFile(resolve('templates/starter/shelter.md'))
  const texts: TextOptions = {
    version: '0.0.0',
    name: 'shelter.md',
    command: 'test',
    draft: false,
    paper: 'A4',
    date: undefined,
    assets: await assets(resolve('dist')),
  }
  const proved = provePackage(evaluated, texts)
  const job = { evaluated, ...(signal ? { signal } : {}) } as PrintJob
  return {
    ...(await printProved(browser, expectPackage(evaluated, texts), job)),
    right: wholePrint(proved.compose(identity).print),
    count: proved.count,
  }
}

describe('printProved', () => {
  it('prints once where the proof comes to what was expected, and prints what was proved', async () => {
    const { proved, right, count } = await issued()
    expect(printed).toHaveLength(1)
    expect(printed[0] === right).toBe(true)
    expect(proved.count).toEqual(count)
    expect(right).toContain(`${count.lines} of ${count.lines} lines close`)
  })

  it('prints again where the proof comes to another count, and gives the second print', async () => {
    vi.mocked(expectedCount).mockReturnValue({ lines: 7, closing: 7, notPencil: 0 })
    const { right, count } = await issued()
    expect(count.lines).toBeGreaterThan(7)
    expect(printed).toHaveLength(2)
    expect(printed[0]).toContain('7 of 7 lines close')
    expect(printed[1] === right).toBe(true)
  })

  it('proves the page all the same where nothing could be printed', async () => {
    answer = failure
    vi.mocked(printPdf).mockImplementation(async () => failure)
    const { proved, printed: none, count } = await issued()
    expect(none).toBe(failure)
    expect(proved.count).toEqual(count)
  })

  it('proves nothing more once it is stopped', async () => {
    vi.mocked(printPdf).mockImplementation(async () => failure)
    await expect(issued(AbortSignal.abort('SIGINT'))).rejects.toBe('SIGINT')
  })

  it('finds no margins more once it is stopped', async () => {
    const evaluated = await evaluateFile(resolve('templates/starter/shelter.md'))
    await expect(lateModelInTurns(evaluated, AbortSignal.abort('SIGINT'))).rejects.toBe('SIGINT')
  })

  it('goes on at once with margins that are being found in turns, and both give the same', async () => {
    const evaluated = await evaluateFile(resolve('templates/starter/shelter.md'))
    const inTurns = lateModelInTurns(evaluated)
    const model = lateModel(evaluated)
    expect(model.margins?.size).toBeGreaterThan(3)
    expect(await inTurns).toBe(model)
  })
})
