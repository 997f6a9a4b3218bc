import type { Rules } from '../../admit/rule.ts'
import type { messageKinds } from './kinds.ts'

export const messageRules: Rules<keyof typeof messageKinds> = {
  'contact.made': [],
  'note.added': [],
}
