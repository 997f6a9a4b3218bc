import type { SentSide } from '@bayledger/contract/entries'
import { sideDigest } from '@bayledger/ledger/digests'
import { AppError } from '../../../core/app-error.ts'
import { allowedWords } from '../../../words/field-words.ts'

/** A side as it came with an entry: which kind it is of, the entry's own schema says. */
export type Side = { readonly digest: string; readonly salt: Uint8Array; readonly text: string }

/** Sides by their digest; refused unless each digest is what its salt makes of its text. */
export const checkSides = (sides: readonly SentSide[]): ReadonlyMap<string, Side> => {
  const read = sides.map(({ digest, salt, text }) => ({ digest, salt: Buffer.from(salt, 'base64'), text }))
  const fields = read.flatMap(({ digest, salt, text }, index) =>
    sideDigest(text, salt) === digest
      ? []
      : [
          {
            field: `sides.${index}.digest`,
            found: digest,
            allowed: allowedWords.sideDigest,
          },
        ],
  )
  if (fields.length > 0) throw new AppError({ code: 'FIELDS_INVALID', what: 'sides' }, { fields })
  return new Map(read.map((side) => [side.digest, side]))
}
