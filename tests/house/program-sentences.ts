import ts from 'typescript'

/**
 * The program's own sentences in a source file: every text of two words or more, the second in lower case, that is
 * not addressed to a log. A log alone gets what is thrown as a plain `Error` and what is passed to a logger, to the
 * console, to `reportFault` or to `reportRecovery`; SQL, tagged or passed to `query`, is no sentence, nor is markup, PEM or
 * the name of a class.
 */
export const sentencesIn = (file: string, source: string): string[] => textsIn(file, source, readsAsWords)

/**
 * What a person reads in one word: a text that begins with a capitalized word, every word between the tags of a page, and
 * what a report takes for a cell, a paragraph or a heading. A text that is only compared is read by nobody.
 */
export const labelsIn = (file: string, source: string): string[] =>
  textsIn(
    file,
    source,
    (text, node) =>
      !isCompared(node) &&
      (/^\p{Lu}\p{Ll}+(?![\p{L}\p{N}])/u.test(text) ||
        (/\p{L}/u.test(text) && (ts.isJsxText(node) || isPrinted(node)))),
  )

/** Where a code is turned into words by taking its hyphens away: in another language it has to be looked up. */
export const codesAsWordsIn = (source: string): string[] =>
  source.match(/replace(All)?\(['"/]-['"/]g?, ' '\)/g) ?? []

const textsIn = (
  file: string,
  source: string,
  isWanted: (text: string, node: ts.Node) => boolean,
): string[] => {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, kindOf(file))
  const found: string[] = []
  const visit = (node: ts.Node): void => {
    if (isForAMachine(node) || isForALog(node)) return
    const text = textOf(node)
    if (text !== null && isWanted(text, node)) found.push(text)
    ts.forEachChild(node, visit)
  }
  visit(tree)
  return found
}

const isCompared = ({ parent }: ts.Node): boolean =>
  ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText())

/** What goes into a cell, a paragraph or a heading as it stands. */
const isPrinted = ({ parent }: ts.Node): boolean =>
  ts.isCallExpression(parent)
    ? /^(words|gap|good|paragraph)$/.test(parent.expression.getText())
    : ts.isPropertyAssignment(parent) &&
      /^(alt|caption|label|sentence|text|title|word)$/.test(parent.name.getText())

/** The sentences in checks of a form's fields: members named `fault`, functions named …Fault and missingIn…. */
export const typedRefusalsIn = (file: string, source: string): string[] => {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, kindOf(file))
  const found: string[] = []
  const visit = (node: ts.Node): void => {
    if (isCheckOfAField(node)) found.push(...sentencesIn(file, node.getText()))
    else ts.forEachChild(node, visit)
  }
  visit(tree)
  return found
}

const isCheckOfAField = (node: ts.Node): boolean =>
  (ts.isPropertyAssignment(node) && node.name.getText() === 'fault') ||
  (ts.isVariableDeclaration(node) && /Fault$|^missingIn/.test(node.name.getText()))

const kindOf = (file: string): ts.ScriptKind => (file.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS)

const textOf = (node: ts.Node): string | null => {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text
  if (ts.isJsxText(node)) return node.text.trim().replaceAll(/\s+/g, ' ')
  if (ts.isTemplateExpression(node))
    return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('{}')
  return null
}

const readsAsWords = (text: string): boolean =>
  /\p{L}{2,}(?:['’]\p{L}+)? (?:\p{Ll}+|\{\})/u.test(text) && !/^(<|-----BEGIN )/.test(text)

const isForALog = (node: ts.Node): boolean => {
  if (ts.isNewExpression(node)) return /^(Range|Type)?Error$/.test(node.expression.getText())
  if (ts.isCallExpression(node) && /^report(Fault|Recovery)$/.test(node.expression.getText())) return true
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return false
  const { name, expression } = node.expression
  return (
    /^(debug|info|warn|error|fatal)$/.test(name.text) && /\b(log|logger|console)$/.test(expression.getText())
  )
}

const isForAMachine = (node: ts.Node): boolean => {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return true
  if (ts.isJsxAttribute(node)) return node.name.getText() === 'className'
  if (ts.isTaggedTemplateExpression(node)) return /\$(queryRaw|executeRaw)|sql$/.test(node.tag.getText())
  return (
    ts.isCallExpression(node) &&
    ts.isPropertyAccessExpression(node.expression) &&
    /^(query|describe)$/.test(node.expression.name.text)
  )
}
