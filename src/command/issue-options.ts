/** What `issue` may be told besides its notebook. */
export interface IssueOptions {
  readonly out?: string
  readonly draft?: boolean
  readonly paper?: 'A4' | 'letter'
  readonly since?: string
  readonly htmlOnly?: boolean
  readonly browser?: string
  readonly format?: 'text' | 'json'
}
