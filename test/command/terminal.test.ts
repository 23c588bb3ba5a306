import { EventEmitter } from 'node:events'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { terminalOf } from '../../src/command/terminal.ts'

class FakeStream extends EventEmitter {
  written = ''
  isTTY: boolean
  constructor(isTTY: boolean) {
    super()
    this.isTTY = isTTY
  }
  write(text: string): boolean {
    this.written += text
    return true
  }
}

const lost = vi.fn()

function terminal(tty: boolean, variables: Record<string, string> = {}) {
  const [stdout, stderr] = [new FakeStream(tty), new FakeStream(tty)]
  const streams = { stdout: stdout as never, stderr: stderr as never, lost }
  return { stdout, stderr, ...terminalOf(streams, variables) }
}

describe('terminal', () => {
  it('puts the answer on standard output and the rest on standard error, each ended by one line end', () => {
    const { answer, say, stdout, stderr } = terminal(false)
    answer('one')
    answer('two\n')
    say('three')
    expect([stdout.written, stderr.written]).toEqual(['one\ntwo\n', 'three\n'])
  })

  it.each([
    ['a terminal', true, {}, true],
    ['a file', false, {}, false],
    ['a terminal and NO_COLOR', true, { NO_COLOR: '1' }, false],
    ['a terminal and an empty NO_COLOR', true, { NO_COLOR: '' }, true],
    ['a terminal that is dumb', true, { TERM: 'dumb' }, false],
    ['a file and FORCE_COLOR', false, { FORCE_COLOR: '1' }, true],
    ['a terminal and FORCE_COLOR=0', true, { FORCE_COLOR: '0' }, false],
    ['FORCE_COLOR and NO_COLOR', false, { FORCE_COLOR: '1', NO_COLOR: '1' }, false],
  ])('colour for %s: %s %j %s', (_, tty, variables, coloured) => {
    expect(terminal(tty, variables as Record<string, string>).colour !== undefined).toBe(coloured)
  })

  it('goes quiet where its reader has gone, and reports nothing as lost', () => {
    const { answer, stdout } = terminal(false)
    stdout.emit('error', Object.assign(new Error('write EPIPE'), { code: 'EPIPE' }))
    answer('nobody reads this')
    expect([stdout.written, lost.mock.calls.length]).toEqual(['', 0])
  })

  it('reports once that the answer is lost where the disk is full', () => {
    const { stdout } = terminal(false)
    const full = Object.assign(new Error('write ENOSPC'), { code: 'ENOSPC' })
    stdout.emit('error', full)
    stdout.emit('error', full)
    expect(lost.mock.calls).toEqual([[full]])
    lost.mockClear()
  })
})

describe('progress', () => {
  beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] }))
  afterEach(() => vi.useRealTimers())

  it('is shown once the work has taken a second', () => {
    const { doing, stderr } = terminal(true)
    doing('printing 42 pages')
    vi.advanceTimersByTime(999)
    expect(stderr.written).toBe('')
    vi.advanceTimersByTime(1)
    expect(stderr.written).toBe('\r\u001b[Kprinting 42 pages…')
  })

  it('says the last thing that is being done, and at once after the first second', () => {
    const { doing, stderr } = terminal(true)
    doing('reading')
    vi.advanceTimersByTime(600)
    doing('composing')
    vi.advanceTimersByTime(400)
    expect(stderr.written).toBe('\r\u001b[Kcomposing…')
    doing('printing')
    expect(stderr.written).toBe('\r\u001b[Kcomposing…\r\u001b[Kprinting…')
  })

  it('is shown at once for work that leaves no time for it later', () => {
    const { doing, stderr } = terminal(true)
    doing('composing', { atOnce: true })
    expect(stderr.written).toBe('\r\u001b[Kcomposing…')
  })

  it('is wiped before anything else is printed, and nothing is wiped that was not shown', () => {
    const { doing, say, stderr } = terminal(true)
    doing('printing')
    vi.advanceTimersByTime(1000)
    say('done')
    say('more')
    expect(stderr.written).toBe('\r\u001b[Kprinting…\r\u001b[Kdone\nmore\n')
  })

  it('is not shown where nobody watches', () => {
    const { doing, stderr } = terminal(false)
    doing('printing')
    vi.advanceTimersByTime(5000)
    expect(stderr.written).toBe('')
  })
})
