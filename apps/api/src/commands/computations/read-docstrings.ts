import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'

/** The tags that a docstring of a computation may carry after its prose. */
export const tagNames = ['formula', 'units', 'limits', 'source'] as const
export type TagName = (typeof tagNames)[number]

/** An exported function, or an exported figure that a docstring gives a source. */
export type Computation = {
  readonly room: string
  /** From reckoning's `src`, with `/`. */
  readonly file: string
  readonly name: string
  readonly prose: string
  readonly tags: Readonly<Partial<Record<TagName, string>>>
  /** Null for a figure. */
  readonly signature: Signature | null
}

export type Signature = {
  readonly takes: readonly { readonly name: ts.BindingName; readonly type: ts.TypeNode | undefined }[]
  readonly gives: ts.TypeNode | undefined
}

export type Reckoning = {
  readonly computations: readonly Computation[]
  /** Every type alias of reckoning by name, for describing types in words. */
  readonly types: ReadonlyMap<string, ts.TypeNode>
}

/** Names the unit of a number and computes nothing. */
const namingOnly = 'units/measured.ts'

/** What the rooms export, in the order of the rooms, of file names and of the text. */
export const readReckoning = (folder: string, rooms: readonly string[]): Reckoning => {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts') && !/\.(test|test-support)\.ts$/.test(file))
    .sort()
  const parsed = files.map((file) => ({
    file,
    source: parse(file, readFileSync(join(folder, file), 'utf8')),
  }))
  return {
    types: new Map(parsed.flatMap(({ source }) => source.statements.flatMap(typeIn))),
    computations: rooms.flatMap((room) =>
      parsed
        .filter(({ file }) => file.startsWith(`${room}/`) && file !== namingOnly)
        .flatMap(({ file, source }) => computationsIn(room, file, source)),
    ),
  }
}

/** The computations of one file, for its text. */
export const computationsOf = (room: string, file: string, text: string): Computation[] =>
  computationsIn(room, file, parse(file, text))

const parse = (file: string, text: string): ts.SourceFile =>
  ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)

const typeIn = (statement: ts.Statement): [string, ts.TypeNode][] =>
  ts.isTypeAliasDeclaration(statement) ? [[statement.name.text, statement.type]] : []

const computationsIn = (room: string, file: string, source: ts.SourceFile): Computation[] =>
  source.statements.flatMap((statement) => {
    if (!isExported(statement)) return []
    return declarationsIn(statement).flatMap(({ name, signature }) => {
      const { prose, tags } = docstringOf(statement)
      return signature === null && tags.source === undefined
        ? []
        : [{ room, file, name, prose, tags, signature }]
    })
  })

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)

const declarationsIn = (statement: ts.Statement): { name: string; signature: Signature | null }[] => {
  if (ts.isFunctionDeclaration(statement))
    return [{ name: statement.name?.text ?? 'default', signature: signatureOf(statement) }]
  if (!ts.isVariableStatement(statement)) return []
  return statement.declarationList.declarations.map(({ name, initializer }) => ({
    name: name.getText(),
    signature:
      initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer))
        ? signatureOf(initializer)
        : null,
  }))
}

const signatureOf = ({ parameters, type }: ts.SignatureDeclaration): Signature => ({
  takes: parameters.map((parameter) => ({ name: parameter.name, type: parameter.type })),
  gives: type,
})

const docstringOf = (statement: ts.Statement): Pick<Computation, 'prose' | 'tags'> => {
  const docstring = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc).at(-1)
  const tags: Partial<Record<TagName, string>> = {}
  for (const tag of docstring?.tags ?? []) {
    const name = tagNames.find((known) => known === tag.tagName.text)
    if (name) tags[name] = oneLine(ts.getTextOfJSDocComment(tag.comment))
  }
  return { prose: oneLine(ts.getTextOfJSDocComment(docstring?.comment)), tags }
}

const oneLine = (text: string | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim()
