const patience = 1000
const clear = '\r\x1b[K'

/** A line that says what is being done, shown only once the work has taken a second, and wiped when anything else is printed. */
export function progressLine(write: (text: string) => void): { doing: (what: string) => void; done: () => void } {
  let since: number | undefined
  let timer: NodeJS.Timeout | undefined
  let shown = false
  const show = (what: string): void => {
    shown = true
    write(`${clear}${what}…`)
  }
  return {
    doing: what => {
      since ??= performance.now()
      clearTimeout(timer)
      const left = patience - (performance.now() - since)
      if (left <= 0) show(what)
      // It must not keep the process alive.
      else timer = setTimeout(show, left, what).unref()
    },
    done: () => {
      clearTimeout(timer)
      since = undefined
      if (shown) write(clear)
      shown = false
    },
  }
}
