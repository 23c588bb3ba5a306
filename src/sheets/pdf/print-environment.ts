/** Where the browser and the cache come from. Given by the caller, since only the command line reads the process. */
export interface PrintEnvironment {
  /** The environment variables (`PATH`, `HOME`, `XDG_CACHE_HOME`, `PUPPETEER_CACHE_DIR`), as the browser is to see them. */
  readonly variables: Readonly<Record<string, string | undefined>>
  /** The browser the user named (an option, or `UNDERCROFT_BROWSER`); nothing else is tried then. */
  readonly browser?: string
  /** Folder to keep the unpacked browser in, in place of the user's cache folder. */
  readonly cacheFolder?: string
  /** Stops the work: the browser is ended and what was written for it removed. */
  readonly signal?: AbortSignal
}
