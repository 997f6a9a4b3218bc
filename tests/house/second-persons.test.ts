import { contract } from '@bayledger/contract/contract'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { definitionOf, kindNames } from '@bayledger/ledger/registry'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'

type Schema = {
  readonly properties?: Readonly<Record<string, Schema>>
  readonly additionalProperties?: Schema | boolean
  readonly items?: Schema
  readonly prefixItems?: readonly Schema[]
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
}

/** Fields that hold a person's id, by their names. */
const namesAPerson = /^(staffId|.*PersonId|.*[a-z]By|witness|person)$/

/** What shows that the person of the same object agreed: their PIN, or what it earned. */
const proofs = ['pin', 'token', 'proof']

/** The paths of fields that name a person as bare text, with nothing beside them that proves anything. */
const barePersons = (schema: Schema, path = ''): string[] => {
  const properties = Object.entries(schema.properties ?? {})
  const isProven = properties.some(([name]) => proofs.includes(name))
  return [
    ...properties.flatMap(([name, of]) =>
      namesAPerson.test(name) && !isProven && !hasParts(of) && !isChosenFromList(of)
        ? [`${path}${name}`]
        : barePersons(of, `${path}${name}.`),
    ),
    ...[schema.items, ...(schema.prefixItems ?? [])].flatMap((of) => (of ? barePersons(of, path) : [])),
    ...(typeof schema.additionalProperties === 'object'
      ? barePersons(schema.additionalProperties, `${path}*.`)
      : []),
    ...[...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].flatMap((of) => barePersons(of, path)),
  ]
}

/** Whether a field is an object or a list of objects, in any of its forms: then its own fields are looked at. */
const hasParts = ({ properties, items, anyOf, oneOf }: Schema): boolean =>
  properties !== undefined || items !== undefined || [...(anyOf ?? []), ...(oneOf ?? [])].some(hasParts)

/** One of a few words that the program knows is no person. */
const isChosenFromList = (schema: Schema): boolean => schema.enum !== undefined || schema.const !== undefined

const schemaOf = (type: z.core.$ZodType): Schema =>
  z.toJSONSchema(type, { io: 'input', unrepresentable: 'any' }) as Schema

describe('a second person is never a bare id from whoever sends it', () => {
  it('in any kind of entry', () => {
    expect(
      kindNames.flatMap((kind) => barePersons(schemaOf(definitionOf(kind).payload), `${kind} `)).toSorted(),
    ).toEqual([
      // Who gets the order next: nobody agrees to anything by it.
      'order.assigned staffId',
      // The sheet as it is on file, to the last figure; there the people were proven.
      ...['frequency', 'lifting', 'placard', 'relearn', 'studTorque', 'system'].flatMap((figure) => [
        `sheet.chosen sheet.sources.${figure}.enteredBy`,
        `sheet.chosen sheet.sources.${figure}.verifiedBy`,
      ]),
    ])
  })

  it('in the body of any route', () => {
    const routes: readonly Endpoint[] = contract
    expect(
      routes.flatMap(({ operationId, body }) => (body ? barePersons(schemaOf(body), `${operationId} `) : [])),
    ).toEqual([
      // The tablet's own key signs both: whoever it names typed their PIN there.
      'resumeAtBay staffId',
      'handInParcel staffId',
    ])
  })

  it('and the search itself finds one in a list, in a choice and under any key', () => {
    const Person = z.strictObject({ staffId: z.uuid() })
    const found = (type: z.core.$ZodType) => barePersons(schemaOf(type))
    expect(found(z.array(Person))).toEqual(['staffId'])
    expect(found(z.strictObject({ a: z.nullable(z.union([Person, z.null()])) }))).toEqual(['a.staffId'])
    expect(found(z.record(z.string(), Person))).toEqual(['*.staffId'])
    expect(found(z.strictObject({ agreedBy: z.nullable(z.uuid()) }))).toEqual(['agreedBy'])
    expect(found(z.strictObject({ staffId: z.uuid(), token: z.string() }))).toEqual([])
  })
})
