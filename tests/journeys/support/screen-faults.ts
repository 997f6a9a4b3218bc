import type { Page } from 'playwright-core'

/** What reaches beyond the screen's side, or is cut off: a button whose words do not fit it, and words of which the letters lie under one another. */
export const faultsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    // A page that is too wide makes a tablet zoom out: its own width is what counts, not that of the zoomed window.
    const width = document.documentElement.clientWidth
    const wide = document.documentElement.scrollWidth > width ? ['the page scrolls sideways'] : []
    const seen = [...document.querySelectorAll('button, a[href], h1')].filter(
      (one) => one.getBoundingClientRect().width > 0 && !one.classList.contains('plan-button'),
    )
    const cut = seen.flatMap((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect()
      // Half under the pad: its upper edge can be seen, its lower one cannot. A long list of rows scrolls by itself.
      const pad = document.querySelector('.bay-pad')?.getBoundingClientRect()
      const isUnderPad =
        pad !== undefined &&
        one.closest('.bay-step') !== null &&
        one.closest('.row-cells') === null &&
        top < pad.top - 1 &&
        bottom > pad.top + 1
      // The heading says what is to be done: it may not lie under the pad as a whole either.
      const isHidden =
        pad !== undefined && one.tagName === 'H1' && one.closest('.bay-step') !== null && bottom > pad.top + 1
      // Beside the drawing nothing may be scrolled out of reach either.
      const holder = [one.closest('.bay-vehicle'), one.closest('.bay-side')].find(
        (box) => box !== null && getComputedStyle(box).display !== 'contents',
      )
      const isClipped = holder != null && bottom > holder.getBoundingClientRect().bottom + 1
      const isOutside = left < -1 || right > width + 1
      const isCut = one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1
      return isOutside || isCut || isUnderPad || isHidden || isClipped ? [`${one.textContent}`] : []
    })
    const stacked = [...document.querySelectorAll('.bay-edge :is(button, a, .bay-unsent)')].flatMap((one) => {
      const range = document.createRange()
      range.selectNodeContents(one)
      const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size
      return lines > (one.textContent ?? '').split(/[ -]/).length
        ? [`letter under letter: ${one.textContent}`]
        : []
    })
    return [...wide, ...cut, ...stacked]
  })
