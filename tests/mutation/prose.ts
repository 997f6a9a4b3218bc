type Path = { readonly node: { readonly type: string; readonly value?: unknown } }

/**
 * Leaves texts with a space in them as they are: they are sentences for people, and a mutant of one is another
 * sentence. Texts without a space are codes and names by which the program decides; they are changed.
 */
const prose = {
  shouldIgnore: ({ node }: Path): string | undefined =>
    node.type === 'StringLiteral' && String(node.value).includes(' ') ? 'a sentence for people' : undefined,
}

/** @public Loaded by the mutation run, by this name. */
export const strykerPlugins = [{ kind: 'Ignore', name: 'prose', value: prose }]
