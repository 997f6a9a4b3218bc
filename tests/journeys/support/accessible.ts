import axe from 'axe-core'
import type { Locator, Page } from 'playwright-core'

/**
 * Violations of WCAG 2.0 to 2.2, A and AA, that axe-core finds on the current page: rule and element each.
 * axe sees about half of what can be wrong; keyboard and screen-reader use are tried apart.
 */
export const violationsOn = async (page: Page): Promise<string[]> => {
  // Evaluated in the page's own world: the content policy forbids adding a script element.
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source)
  return page.evaluate(async () => {
    type Axe = {
      run: (
        context: Document,
        options: object,
      ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>
    }
    const { axe } = globalThis as unknown as { axe: Axe }
    const { violations } = await axe.run(document, {
      runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
    })
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} (${failureSummary})`),
    )
  })
}

/**
 * The same for many pages that are made alike: a page on which every element is of a kind that was looked at before, in the same
 * surroundings and the same state, is passed over. `known` holds these kinds and is added to.
 */
export const violationsOnNew = async (page: Page, known: Set<string>): Promise<string[]> => {
  const kinds = await page.evaluate(() => {
    const kindOf = (element: Element | null): string => {
      if (element === null || element === document.body) return ''
      const states = [...element.attributes].filter(({ name }) => /^(role|type|disabled|aria-)/.test(name))
      const said = states.map(
        ({ name, value }) => `${name}=${/^(true|false|page|step)$/.test(value) ? value : ''}`,
      )
      return `${element.tagName} ${element.getAttribute('class') ?? ''} ${said.join(' ')}`
    }
    const all = [...document.body.querySelectorAll('*')]
    const inPlace = (one: Element): string =>
      [one, one.parentElement, one.parentElement?.parentElement ?? null].map(kindOf).join(' in ')
    return [...new Set(all.map(inPlace))]
  })
  const isNew = kinds.some((kind) => !known.has(kind))
  for (const kind of kinds) known.add(kind)
  return isNew ? violationsOn(page) : []
}

/**
 * Presses Tab until what holds the focus says `words`; fails when a whole round has not met it. Among the options of a choice, of
 * which Tab reaches one, the arrows go on.
 */
export const tabTo = async (page: Page, words: string): Promise<void> => {
  const met: string[] = []
  while (met.length < 140) {
    const { text, isBeside } = await page.evaluate((wanted) => {
      const at = document.activeElement
      const label = at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement ? at.labels?.[0] : at
      const choice = at instanceof HTMLInputElement && at.type === 'radio' ? at.closest('fieldset') : null
      const options = [...(choice?.querySelectorAll('label') ?? [])]
      return {
        text: label === document.body ? '' : (label?.textContent ?? ''),
        isBeside: options.some(({ textContent }) => textContent?.includes(wanted)),
      }
    }, words)
    if (text.includes(words)) return
    met.push(text)
    await page.keyboard.press(isBeside ? 'ArrowDown' : 'Tab')
  }
  throw new Error(`Tab never reaches “${words}”: ${[...new Set(met)].join(' | ')}`)
}

/** What has the focus, by its words. */
export const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.textContent ?? '')

/** Whether an element can be seen up to its right edge: nothing lies over it there. */
export const isOnTop = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => {
    const { right, top, height } = element.getBoundingClientRect()
    return element.contains(document.elementFromPoint(right - 8, top + height / 2))
  })

/** What is smaller than 18 mm of all that a glove presses, by its words and what it measures. */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a[href], input')].flatMap((target) => {
      const { width, height } = target.getBoundingClientRect()
      return width > 0 && Math.min(width, height) < 68 ? [`${target.textContent} ${width}×${height}`] : []
    }),
  )
