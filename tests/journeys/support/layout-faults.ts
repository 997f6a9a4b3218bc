import type { Page } from 'playwright-core'

/**
 * What of the words on a page cannot be read: a page or a part of it that is wider than its room, text beyond the edge, and texts that
 * lie over one another. What is cut with three dots on purpose (`mayBeCut`) is whole elsewhere.
 */
export const layoutFaultsOn = (page: Page, mayBeCut = '.never'): Promise<string[]> =>
  page.evaluate((cutOnPurpose) => {
    const width = document.documentElement.clientWidth
    const said = (element: Node) => (element.textContent ?? '').trim().slice(0, 60)
    const isShown = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
      element.closest('.for-screen-readers, .desk-skip, svg') === null
    /** A line's box is higher than its letters: boxes of neighboring lines touch, and over a quarter of one is over letters. */
    const over = (one: DOMRect, other: DOMRect) =>
      Math.min(one.right, other.right) - Math.max(one.left, other.left) > 2 &&
      Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) >
        Math.min(one.height, other.height) / 4

    /** What scrolls by itself or lies in a layer of its own is compared with itself only. */
    const layerOf = (element: Element): Element => {
      const { overflowY, position } = getComputedStyle(element)
      const isLayer = /auto|scroll/.test(overflowY) || /sticky|fixed/.test(position)
      const { parentElement } = element
      return isLayer || parentElement === null || element.tagName === 'DIALOG'
        ? element
        : layerOf(parentElement)
    }
    const wide = [...document.querySelectorAll('*')].flatMap((element) => {
      if (!isShown(element) || /INPUT|TEXTAREA|SELECT/.test(element.tagName)) return []
      if (element.closest(cutOnPurpose) !== null || element.clientWidth === 0) return []
      const isRoot = element === document.documentElement
      const mayOverflow = !isRoot && getComputedStyle(element).overflowX === 'visible'
      return mayOverflow || element.scrollWidth <= element.clientWidth + 1
        ? []
        : [`wider than its room: ${element.tagName} ${element.className}: ${said(element)}`]
    })
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const texts: { node: Node; layer: Element; boxes: DOMRect[] }[] = []
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement
      if (parent === null || said(node) === '' || !isShown(parent)) continue
      const range = document.createRange()
      range.selectNodeContents(node)
      const edge = parent.closest(cutOnPurpose)?.getBoundingClientRect().right ?? Number.POSITIVE_INFINITY
      const boxes = [...range.getClientRects()].map(
        ({ left, right, top, height }) => new DOMRect(left, top, Math.min(right, edge) - left, height),
      )
      texts.push({ node, layer: layerOf(parent), boxes: boxes.filter((box) => box.width > 0) })
    }
    const beyond = texts
      .filter(({ boxes }) => boxes.some((box) => box.right > width + 1 || box.left < -1))
      .map(({ node }) => `beyond the edge: ${said(node)}`)
    const overlapping = texts.flatMap((one, index) =>
      texts
        .slice(index + 1)
        .filter(
          (other) =>
            other.layer === one.layer && one.boxes.some((box) => other.boxes.some((its) => over(box, its))),
        )
        .map((other) => `"${said(one.node)}" lies over "${said(other.node)}"`),
    )
    return [...wide, ...beyond, ...overlapping]
  }, mayBeCut)
