/**
 * The desk and the customer's page are light or dark as the device is, and always light on paper. The bay has looks of
 * its own to choose from. Call it once before the first drawing.
 */
export function followLookOfDevice(): void {
  const dark = window.matchMedia('(prefers-color-scheme: dark)')
  const paper = window.matchMedia('print')
  const follow = () => {
    document.documentElement.dataset.look = dark.matches && !paper.matches ? 'dark-bay' : 'sheet'
  }
  dark.addEventListener('change', follow)
  paper.addEventListener('change', follow)
  follow()
}
