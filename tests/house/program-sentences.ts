import ts from 'typescript'

/**
 * The program's own sentences in a source file: every text of two words or more, the second in lower case, that is
 * not addressed to a log. A log alone gets what is thrown as a plain `Error` and what is passed to a logger, to the
 * console or to `reportFault`; SQL, tagged or passed to `query`, is no sentence.
 */
export const sentencesIn = (file: string, source: string): string[] => {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, kindOf(file))
  const found: string[] = []
  const visit = (node: ts.Node): void => {
    if (isForAMachine(node) || isForALog(node)) return
    const text = textOf(node)
    if (text !== null && readsAsWords(text)) found.push(text)
    ts.forEachChild(node, visit)
  }
  visit(tree)
  return found
}

const kindOf = (file: string): ts.ScriptKind => (file.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS)

const textOf = (node: ts.Node): string | null => {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text
  if (ts.isTemplateExpression(node))
    return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('{}')
  return null
}

const readsAsWords = (text: string): boolean => /\p{L}{2,}(?:['’]\p{L}+)? (?:\p{Ll}+|\{\})/u.test(text)

const isForALog = (node: ts.Node): boolean => {
  if (ts.isNewExpression(node)) return /^(Range|Type)?Error$/.test(node.expression.getText())
  if (ts.isCallExpression(node) && node.expression.getText() === 'reportFault') return true
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return false
  const { name, expression } = node.expression
  return (
    /^(debug|info|warn|error|fatal)$/.test(name.text) && /\b(log|logger|console)$/.test(expression.getText())
  )
}

const isForAMachine = (node: ts.Node): boolean => {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return true
  if (ts.isTaggedTemplateExpression(node)) return /\$(queryRaw|executeRaw)|sql$/.test(node.tag.getText())
  return (
    ts.isCallExpression(node) &&
    ts.isPropertyAccessExpression(node.expression) &&
    /^(query|describe)$/.test(node.expression.name.text)
  )
}
