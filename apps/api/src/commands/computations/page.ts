import type { Computation, Reckoning } from './read-docstrings.ts'
import { givesWords, spaced, takesWords } from './type-words.ts'

/** Reckoning's computations as a page for a technician and for an engineer, from the docstrings beside the code. */
export const computationsPage = (reckoning: Reckoning, rooms: Readonly<Record<string, string>>): string =>
  [
    '# What Bayledger computes, and from where',
    '',
    'This page is written by `npm run docs:computations` from the docstrings in packages/reckoning; edit those, not this.',
    '',
    'A figure that can hurt someone is the vehicle maker’s: nothing here takes its place. Every source says how sure it is: read, quoted, from memory, computed from its definition; what the trade does without a published source is common practice; and what Bayledger decided by itself is this program’s own rule. `npm run -s check:published` holds the computations against their sources.',
    '',
    ...Object.entries(rooms).flatMap(([room, about]) => section(room, about, reckoning)),
  ].join('\n')

const section = (room: string, about: string, { computations, types }: Reckoning): string[] => {
  const here = computations.filter((computation) => computation.room === room)
  if (here.length === 0) return []
  return [`## ${titled(room)}`, '', about, '', ...here.flatMap((one) => subsection(one, types))]
}

const subsection = (one: Computation, types: Reckoning['types']): string[] => {
  const { name, file, prose, tags, signature } = one
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['Takes', signature ? takesWords(signature, types) : undefined],
    ['Gives', signature ? givesWords(signature, types) : undefined],
    ['Formula', tags.formula],
    ['Units', tags.units],
    ['Limits', tags.limits],
    ['Source', tags.source],
  ]
  return [
    `### ${titled(spaced(name))}`,
    '',
    prose,
    '',
    ...rows.flatMap(([label, words]) => (words ? [`- ${label}: ${words}`] : [])),
    `- Code: \`${name}\` in \`${file}\``,
    '',
  ]
}

const titled = (room: string): string => {
  const words = room.replaceAll('-', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
