import * as z from 'zod'

/** A JSON Schema (draft 2020-12) as our OpenAPI document holds it; only what is read here. */
export type JsonSchema = { readonly [member: string]: unknown }

const Schema = z.record(z.string(), z.unknown())
const Parameter = z.object({
  name: z.string(),
  in: z.enum(['path', 'query', 'header']),
  required: z.boolean(),
  schema: Schema,
})
export type Parameter = z.infer<typeof Parameter>

const Document = z.object({
  paths: z.record(
    z.string(),
    z.record(
      z.string(),
      z.object({
        operationId: z.string(),
        'x-access': z.enum(['public', 'device', 'staff', 'desk', 'customer-link']),
        parameters: z.array(Parameter),
        requestBody: z.optional(
          z.object({ content: z.record(z.string(), z.object({ schema: z.optional(Schema) })) }),
        ),
        responses: z.record(z.string(), z.object({ content: z.optional(z.record(z.string(), z.unknown())) })),
      }),
    ),
  ),
})

export type Access = 'public' | 'device' | 'staff' | 'desk' | 'customer-link'

/** One operation of the service, with all that a request to it may hold. */
export type Operation = {
  readonly operationId: string
  readonly method: string
  /** As OpenAPI writes it: `/api/orders/{orderId}`. */
  readonly path: string
  readonly access: Access
  readonly parameters: readonly Parameter[]
  /** The schema of a JSON body; `null` where it takes none. */
  readonly body: JsonSchema | null
  /** The media type of a body of plain bytes; `null` where it takes none. */
  readonly bytes: string | null
  /** The media types that are declared for each status. */
  readonly answers: ReadonlyMap<number, readonly string[]>
}

const isEmpty = (schema: JsonSchema | null): boolean => Object.keys(schema ?? {}).length === 0

/** Reads the operations of an OpenAPI document; throws where the document is not one of ours. */
export const operationsIn = (document: unknown): [Operation, ...Operation[]] => {
  const operations = Object.entries(Document.parse(document).paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]): Operation => {
      const content = operation.requestBody?.content ?? {}
      const json = content['application/json']?.schema ?? null
      const bytes = Object.keys(content).find((type) => type !== 'application/json') ?? null
      return {
        operationId: operation.operationId,
        method: method.toUpperCase(),
        path,
        access: operation['x-access'],
        parameters: operation.parameters,
        // A body of bytes alone has a schema in JSON that says nothing.
        body: bytes !== null && isEmpty(json) ? null : json,
        bytes,
        answers: new Map(
          Object.entries(operation.responses).map(([status, { content = {} }]) => [
            Number(status),
            Object.keys(content),
          ]),
        ),
      }
    }),
  )
  const [first, ...rest] = operations
  if (!first) throw new Error('The OpenAPI document names no operation.')
  return [first, ...rest]
}
