import type * as z from 'zod/mini'

/** The names of the fields that a schema knows at a path; empty where the path leads to no object. */
export const knownFieldsAt = (root: z.core.$ZodType, path: readonly string[]): string[] => {
  const schema = schemaAt(root, path)
  return schema?._zod.def.type === 'object' ? Object.keys(shapeOf(schema)) : []
}

/** Whether a dotted path, such as `wheels.LF.gauge`, names a field of the schema. */
export const isFieldPath = (root: z.core.$ZodType, path: string): boolean =>
  schemaAt(root, path.split('.')) !== undefined

const shapeOf = (schema: z.core.$ZodType): Readonly<Record<string, z.core.$ZodType>> =>
  (schema as z.core.$ZodObject)._zod.def.shape

const schemaAt = (root: z.core.$ZodType, path: readonly string[]): z.core.$ZodType | undefined =>
  path.reduce<z.core.$ZodType | undefined>((schema, name) => schema && childOf(schema, name), unwrapped(root))

const childOf = (schema: z.core.$ZodType, name: string): z.core.$ZodType | undefined => {
  const type = schema._zod.def.type
  if (type === 'object') {
    const shape = shapeOf(schema)
    const child = Object.hasOwn(shape, name) ? shape[name] : undefined
    return child && unwrapped(child)
  }
  if (type === 'array' && /^\d+$/.test(name)) return unwrapped((schema as z.core.$ZodArray)._zod.def.element)
  return undefined
}

const unwrapped = (schema: z.core.$ZodType): z.core.$ZodType => {
  const { type } = schema._zod.def
  if (type !== 'optional' && type !== 'nullable') return schema
  return unwrapped((schema as z.core.$ZodOptional | z.core.$ZodNullable)._zod.def.innerType)
}
