import type { PersonalText } from '@bayledger/contract/entries'
import { personalDigest } from '@bayledger/ledger/hash-chain'
import { AppError } from '../../../core/app-error.ts'
import type { Words } from '../store/write-entries.ts'

/** Personal words by their digest; refused unless each digest is what its salt makes of its text. */
export const checkWords = (texts: readonly PersonalText[]): ReadonlyMap<string, Words> => {
  const words = texts.map(({ digest, salt, text }) => ({ digest, salt: Buffer.from(salt, 'base64'), text }))
  const fields = words.flatMap(({ digest, salt, text }, index) =>
    personalDigest(text, salt) === digest
      ? []
      : [
          {
            field: `texts.${index}.digest`,
            found: digest,
            allowed: 'HMAC-SHA-256 of the text under its salt',
          },
        ],
  )
  if (fields.length > 0)
    throw new AppError(
      'FIELDS_INVALID',
      'Words arrived changed: their digest does not match. Send them again.',
      {
        fields,
      },
    )
  return new Map(words.map((word) => [word.digest, word]))
}
