import * as z from 'zod/mini'
import { kind } from '../../kind.ts'
import { roles } from '../../role.ts'
import { PersonalDigest } from '../../side-kinds.ts'

export const messageKinds = {
  'contact.made': kind(
    z.strictObject({
      channel: z.enum(['in-person', 'telephone', 'link', 'message']),
      outcome: z.enum(['reached', 'not-reached', 'left-word']),
      words: z.nullable(PersonalDigest),
    }),
    { roles, sides: ['personal'] },
  ),
  'note.added': kind(z.strictObject({ words: PersonalDigest }), { roles, sides: ['personal'] }),
}
