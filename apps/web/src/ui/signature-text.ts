import type { Signature } from './signature-pad.tsx'

/** A signature as the text that is kept: the strokes with their times, or the typed name. A picture alone is weak. */
export const signatureText = (signature: Signature): string =>
  signature.form === 'typed'
    ? signature.name
    : JSON.stringify({ width: signature.width, height: signature.height, strokes: signature.strokes })
