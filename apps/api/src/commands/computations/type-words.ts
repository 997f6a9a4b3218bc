import ts from 'typescript'
import type { Signature } from './read-docstrings.ts'

type Types = ReadonlyMap<string, ts.TypeNode>

/** What a function takes, in words: `gauge (kPa gauge), from (K)`. */
export const takesWords = ({ takes }: Signature, types: Types): string =>
  takes.flatMap(({ name, type }) => inputWords(name, type, types)).join(', ')

/** What it gives, in words; one level of an object's members is spelled out. */
export const givesWords = ({ gives }: Signature, types: Types): string => {
  const members = gives && membersOf(gives, types)
  return members ? `${typeWords(gives, types)}: ${membersWords(members, types)}` : typeWords(gives, types)
}

const inputWords = (name: ts.BindingName, type: ts.TypeNode | undefined, types: Types): string[] => {
  const members = type && membersOf(type, types)
  if (ts.isIdentifier(name) || !members)
    return [`${ts.isIdentifier(name) ? spaced(name.text) : 'of'} (${typeWords(type, types)})`]
  const bound = ts.isObjectBindingPattern(name)
    ? name.elements.map((element) => (element.propertyName ?? element.name).getText())
    : []
  return members
    .filter((member) => bound.includes(member.name.getText()))
    .map((member) => memberWords(member, types))
}

/** The members of an object type, written out or behind a name; undefined for any other type. */
const membersOf = (type: ts.TypeNode, types: Types): ts.PropertySignature[] | undefined => {
  if (ts.isTypeLiteralNode(type)) return type.members.filter(ts.isPropertySignature)
  const behind = ts.isTypeReferenceNode(type) && types.get(type.typeName.getText())
  return behind && ts.isTypeLiteralNode(behind) ? behind.members.filter(ts.isPropertySignature) : undefined
}

const memberWords = (member: ts.PropertySignature, types: Types): string =>
  `${spaced(member.name.getText())} (${typeWords(member.type, types)})`

const membersWords = (members: readonly ts.PropertySignature[], types: Types): string =>
  members.map((member) => memberWords(member, types)).join(', ')

/** A type as a person says it: `kPa gauge`, `text`, `list of K`, `calendar day, or a refusal in words`. */
export const typeWords = (type: ts.TypeNode | undefined, types: Types): string => {
  if (!type) return 'not said'
  const plain = plainWords[type.kind]
  if (plain) return plain
  if (ts.isUnionTypeNode(type)) return type.types.map((one) => typeWords(one, types)).join(' or ')
  if (ts.isArrayTypeNode(type)) return `list of ${typeWords(type.elementType, types)}`
  if (ts.isTypeOperatorNode(type) || ts.isParenthesizedTypeNode(type)) return typeWords(type.type, types)
  if (ts.isLiteralTypeNode(type)) return literalWords(type)
  if (ts.isTupleTypeNode(type)) return type.elements.map((one) => typeWords(one, types)).join(', then ')
  if (ts.isTypeLiteralNode(type)) return membersWords(type.members.filter(ts.isPropertySignature), types)
  if (ts.isTypePredicateNode(type)) return `whether it is a ${typeWords(type.type, types)}`
  if (ts.isIndexedAccessTypeNode(type)) return partWords(type, types)
  if (ts.isTypeReferenceNode(type)) return referenceWords(type, types)
  return `\`${type.getText()}\``
}

const plainWords: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.NumberKeyword]: 'number',
  [ts.SyntaxKind.StringKeyword]: 'text',
  [ts.SyntaxKind.BooleanKeyword]: 'yes or no',
  [ts.SyntaxKind.UnknownKeyword]: 'anything',
}

const literalWords = ({ literal }: ts.LiteralTypeNode): string =>
  literal.kind === ts.SyntaxKind.NullKeyword ? 'nothing' : literal.getText().replaceAll("'", '')

const referenceWords = (type: ts.TypeReferenceNode, types: Types): string => {
  const name = type.typeName.getText()
  const [first] = type.typeArguments ?? []
  const unit = unitOf(types.get(name))
  if (unit !== undefined) return unit
  if (name === 'Reading') return `${typeWords(first, types)}, or a refusal in words`
  if (first && looking.has(name)) return typeWords(first, types)
  return first ? `\`${type.getText()}\`` : spaced(name)
}

/** `Distance['unit']` is "mi or km" where the type is written out, else "unit of a distance". */
const partWords = ({ objectType, indexType }: ts.IndexedAccessTypeNode, types: Types): string => {
  const part = indexType.getText().replaceAll("'", '')
  const member = membersOf(objectType, types)?.find(({ name }) => name.getText() === part)
  return member ? typeWords(member.type, types) : `${spaced(part)} of a ${typeWords(objectType, types)}`
}

/** Types that say how another one is looked at. */
const looking = new Set(['Readonly', 'Pick', 'Omit', 'Partial'])

/** The unit of a number that a type carries, from its own definition. */
const unitOf = (type: ts.TypeNode | undefined): string | undefined => {
  const [unit] =
    type && ts.isTypeReferenceNode(type) && type.typeName.getText() === 'Measured'
      ? (type.typeArguments ?? [])
      : []
  return unit && ts.isLiteralTypeNode(unit) ? literalWords(unit) : undefined
}

/** `airBefore` is "air before", `SpecificationSheet` is "specification sheet". */
export const spaced = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, (_pair, before: string, after: string) => `${before} ${after.toLowerCase()}`)
    .replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())
