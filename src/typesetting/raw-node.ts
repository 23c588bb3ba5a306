/// <reference types="mdast-util-to-hast" />
import type { Nodes } from 'hast'

/** Markup of our own that is already serialised: the nodes of hast, with `raw` among them. */
export type Raw = Extract<Nodes, { readonly type: 'raw' }>

/** A raw node: serialised as it stands. */
export const raw = (value: string): Raw => ({ type: 'raw', value })
