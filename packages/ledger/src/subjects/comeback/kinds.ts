import { ComebackCause } from '@bayledger/reckoning/money/line-cover'
import * as z from 'zod/mini'
import { kind } from '../../kind.ts'
import { coverRoles } from '../../role.ts'
import { PersonalDigest } from '../../side-kinds.ts'

export const comebackKinds = {
  /** Why the vehicle came back after our work. Another one corrects it; both stay on record. */
  'comeback.judged': kind(z.strictObject({ cause: ComebackCause, words: z.nullable(PersonalDigest) }), {
    roles: coverRoles,
    writtenWhere: 'server',
    strikable: 'no',
    sides: ['personal'],
  }),
}
