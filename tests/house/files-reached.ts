import { dirname, posix } from 'node:path'
import ts from 'typescript'
import { textOf } from './repository-files.ts'

/** A source file and all files of its room whose code it runs, from the root: what is imported as a type alone is no code. */
export const filesReachedFrom = (entry: string): string[] => {
  const reached = new Set<string>()
  const visit = (file: string): void => {
    if (reached.has(file)) return
    reached.add(file)
    for (const name of importsOf(file)) if (/^\..*\.tsx?$/.test(name)) visit(posix.join(dirname(file), name))
  }
  visit(entry)
  return [...reached]
}

const importsOf = (file: string): string[] => {
  const found: string[] = []
  const visit = (node: ts.Node): void => {
    const names =
      (ts.isImportDeclaration(node) && !node.importClause?.isTypeOnly) || ts.isExportDeclaration(node)
    const name = names ? node.moduleSpecifier : isDynamicImport(node) ? node.arguments[0] : undefined
    if (name && ts.isStringLiteral(name)) found.push(name.text)
    ts.forEachChild(node, visit)
  }
  visit(ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest, true))
  return found
}

const isDynamicImport = (node: ts.Node): node is ts.CallExpression =>
  ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
