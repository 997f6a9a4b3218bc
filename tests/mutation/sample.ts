import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'

/**
 * Of what these globs name, each `every`th statement at the top of a file, as ranges of lines that Stryker takes in
 * place of the globs. Imports and types have nothing to mutate and do not count.
 */
export const sampled = (root: string, globs: readonly string[], every: number): string[] => {
  const left = globs.filter((glob) => glob.startsWith('!'))
  const exclude = left.map((glob) => glob.slice(1))
  return [
    ...globSync(
      globs.filter((glob) => !glob.startsWith('!')),
      { cwd: root, exclude },
    )
      .sort()
      .flatMap((file) => statementsOf(file, readFileSync(join(root, file), 'utf8')))
      .filter((_, at) => at % every === 0),
    ...left,
  ]
}

const statementsOf = (file: string, text: string): string[] => {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const lineAt = (position: number): number => source.getLineAndCharacterOfPosition(position).line + 1
  return source.statements
    .filter((one) => ts.isVariableStatement(one) || ts.isFunctionDeclaration(one))
    .map((one) => `${file}:${lineAt(one.getStart())}-${lineAt(one.end)}`)
}
