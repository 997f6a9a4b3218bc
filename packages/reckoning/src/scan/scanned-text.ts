/** What a scanner puts around a barcode's own text, and the pieces of which that text is made. */
export type ScannedText = {
  /** Without what the scanner added; what cannot be printed separates its pieces and is not in it. */
  readonly text: string
  /** The text cut where labels list several fields: at line ends, tabs, commas, semicolons and bars. */
  readonly pieces: readonly string[]
}

/**
 * Takes off what is not a label's own: the symbology identifier that a scanner may send first (]C0), the stars around a
 * Code 39, and the envelope of a Data Matrix, whose separators cannot be printed.
 *
 * @limits the identifier has three characters: ], a letter, a digit or letter
 * @source symbology identifiers: ISO/IEC 15424 as scanner manuals list them (quoted); the envelope [)> with RS, GS and
 * EOT: ISO/IEC 15434 (from memory)
 */
export const scannedText = (raw: string): ScannedText => {
  const own = raw
    .replace(/^\s*\][A-Za-z][0-9A-Za-z]/, '')
    .replace(/^\[\)>/, '')
    .replace(unprintable, '\n')
    .trim()
  const text = /^\*.+\*$/s.test(own) ? own.slice(1, -1).trim() : own
  const pieces = text
    .split(/[\n\t,;|]+/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
  return { text: text.replace(/\n{2,}/g, '\n'), pieces }
}

/** Control characters, except the tab, and the marks by which text is stored and not written. */
const unprintable = /(?:(?!\t)[\p{Cc}\p{Cf}\u2028\u2029\uFFFD])+/gu
