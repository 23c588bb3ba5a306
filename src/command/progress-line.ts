const patience = 1000
const clear = '\r\x1b[K'

/** Says what is being done; at once where it is long work that leaves no time to say it later. */
export type Doing = (what: string, more?: { readonly atOnce: boolean }) => void

/** A line that says what is being done, shown only once the work has taken a second, and wiped when anything else is printed. */
export function progressLine(write: (text: string) => void): { doing: Doing; done: () => void } {
  let since: number | undefined
  let timer: NodeJS.Timeout | undefined
  let shown = false
  const show = (what: string): void => {
    shown = true
    write(`${clear}${what}…`)
  }
  return {
    doing: (what, { atOnce } = { atOnce: false }) => {
      since ??= performance.now()
      clearTimeout(timer)
      const left = patience - (performance.now() - since)
      if (atOnce || left <= 0) show(what)
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
