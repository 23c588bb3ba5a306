/** Where a formula is read: on a screen, with MathML beside it, or in print, as one labelled picture of glyphs. */
export type Medium = 'screen' | 'print'
