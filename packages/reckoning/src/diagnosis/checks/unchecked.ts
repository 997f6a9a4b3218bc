import type { Facts } from '../facts/facts.ts'
import { allChecks } from './all-checks.ts'
import type { FieldCheck } from './field-check.ts'

/**
 * The facts that are missing and not noted as impossible to get. An event counts as asked when the evidence
 * mentions its kind, whatever the answer.
 */
export const uncheckedFacts = (facts: Facts): readonly FieldCheck[] => {
  const unchecked: FieldCheck[] = []
  for (const { parent, fields } of siblings) {
    const node = nodeAt(facts, parent)
    for (const { check, hasValue } of fields) {
      if (hasValue(node, facts)) continue
      if ((check.applies?.(facts) ?? true) && !facts.notPossible(check.field)) unchecked.push(check)
    }
  }
  return unchecked
}

type Node = Readonly<Record<string, unknown>>

type HasValue = (node: Node, facts: Facts) => boolean

/** Fields of one part of the evidence, so that the part is looked up once for all of them. */
type Siblings = {
  readonly parent: readonly string[]
  readonly fields: { readonly check: FieldCheck; readonly hasValue: HasValue }[]
}

const hasValueOf = (parent: readonly string[], name: string): HasValue => {
  const field = [...parent, name].join('.')
  if (field === 'controlModule.ids') return (_node, { stored }) => stored.all.size > 0
  if (field === `events.${name}`) return (_node, { events }) => events.asked(name)
  return (node) => node[name] !== null && node[name] !== undefined
}

const siblings: readonly Siblings[] = allChecks.reduce<Siblings[]>((made, check) => {
  const path = check.field.split('.')
  const [parent, name] = [path.slice(0, -1), path.at(-1) ?? '']
  const one = { check, hasValue: hasValueOf(parent, name) }
  const last = made.at(-1)
  if (last?.parent.join('.') === parent.join('.')) last.fields.push(one)
  else made.push({ parent, fields: [one] })
  return made
}, [])

const nodeAt = ({ evidence }: Facts, path: readonly string[]): Node => {
  let node: unknown = evidence
  for (const name of path) node = (node as Node)[name] ?? {}
  return node as Node
}
