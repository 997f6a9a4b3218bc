import { type Endpoint, openApiPath } from '@bayledger/contract/endpoint'
import { errorStatuses } from '@bayledger/contract/errors'
import { Problem } from '@bayledger/contract/problem'
import { english } from '@bayledger/wording/en/english'
import * as z from 'zod/mini'
import { openApiWords } from '../words/open-api-words.ts'
import { problemsOf } from './route-problems.ts'

type Json = Record<string, unknown>

/** The contract as an OpenAPI 3.1 document: every route, who may call it, what it takes and every reply. */
export const openApiDocument = (contract: readonly Endpoint[], address: string): Json => {
  const paths: Record<string, Json> = {}
  for (const endpoint of contract) {
    const path = openApiPath(endpoint.path)
    paths[path] = { ...paths[path], [endpoint.method.toLowerCase()]: operation(endpoint) }
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Bayledger',
      version: '0.1.0',
      description: openApiWords.service,
    },
    servers: [{ url: address }],
    paths,
    components: {
      schemas: { Problem: jsonSchema(Problem, 'output') },
      securitySchemes: {
        desk: { type: 'apiKey', in: 'cookie', name: 'bayledger-desk' },
        bay: { type: 'apiKey', in: 'cookie', name: 'bayledger-bay' },
        device: { type: 'apiKey', in: 'cookie', name: 'bayledger-device' },
        customer: { type: 'apiKey', in: 'cookie', name: 'bayledger-customer' },
      },
    },
  }
}

const operation = (endpoint: Endpoint): Json => ({
  operationId: endpoint.operationId,
  summary: endpoint.summary,
  'x-access': endpoint.access.who,
  ...('roles' in endpoint.access && endpoint.access.roles ? { 'x-roles': endpoint.access.roles } : {}),
  security: securityOf[endpoint.access.who],
  parameters: [
    ...parametersIn('path', endpoint.params),
    ...parametersIn('query', endpoint.query),
    ...(endpoint.ifMatch ? [header('If-Match', openApiWords.ifMatch)] : []),
    ...(endpoint.once ? [header('Idempotency-Key', openApiWords.idempotencyKey)] : []),
  ],
  ...(endpoint.body ? { requestBody: { required: true, content: bodyContent(endpoint) } } : {}),
  responses: { ...successes(endpoint), ...failures(endpoint) },
})

const securityOf = {
  public: [],
  desk: [{ desk: [] }],
  staff: [{ desk: [] }, { bay: [], device: [] }],
  device: [{ device: [] }, { desk: [] }],
  'customer-link': [{ customer: [] }],
} as const satisfies Record<Endpoint['access']['who'], readonly object[]>

const header = (name: string, description: string): Json => ({
  name,
  in: 'header',
  required: true,
  description,
  schema: { type: 'string' },
})

const parametersIn = (place: 'path' | 'query', schema: z.ZodMiniType | undefined): Json[] => {
  if (!schema) return []
  const { properties = {}, required = [] } = jsonSchema(schema, 'input') as {
    properties?: Record<string, Json>
    required?: string[]
  }
  return Object.entries(properties).map(([name, member]) => ({
    name,
    in: place,
    required: place === 'path' || required.includes(name),
    schema: member,
  }))
}

const bodyContent = (endpoint: Endpoint): Json => ({
  ...(endpoint.body ? { 'application/json': { schema: jsonSchema(endpoint.body, 'input') } } : {}),
  ...(endpoint.bodyIs ? { [endpoint.bodyIs]: { schema: { type: 'string', format: 'binary' } } } : {}),
})

const successes = (endpoint: Endpoint): Json =>
  Object.fromEntries(
    Object.entries(endpoint.replies).map(([status, reply]) => {
      if (reply === null) return [status, { description: 'Done.' }]
      if ('contentType' in reply)
        return [
          status,
          {
            description: openApiWords.file,
            content: { [reply.contentType]: { schema: { type: 'string', format: 'binary' } } },
          },
        ]
      return [
        status,
        { description: 'Done.', content: { 'application/json': { schema: jsonSchema(reply, 'output') } } },
      ]
    }),
  )

const failures = (endpoint: Endpoint): Json => {
  const byStatus = Map.groupBy(problemsOf(endpoint), (code) => errorStatuses[code])
  return Object.fromEntries(
    [...byStatus].map(([status, codes]) => [
      String(status),
      {
        description: codes.map((code) => `${code}: ${english.problems[code].title}.`).join(' '),
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      },
    ]),
  )
}

/** What no JSON can hold, such as a file's bytes, is left open. */
const jsonSchema = (schema: z.ZodMiniType, io: 'input' | 'output'): Json => {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, {
    io,
    unrepresentable: 'any',
    target: 'draft-2020-12',
  })
  return rest
}
