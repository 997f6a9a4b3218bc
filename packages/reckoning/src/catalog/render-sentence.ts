import type { Figures } from '../diagnosis/diagnosis.ts'
import type { FindingCode } from '../diagnosis/finding-codes.ts'
import { readingOrder, type WheelPosition } from '../wheels.ts'
import type { FindingCatalog, Wordings } from './finding-sentences.ts'

/** The customer's sentence for a finding, in a catalog's language, from the figures that the finding carries. */
export const renderSentence = (catalog: FindingCatalog, code: FindingCode, figures: Figures): string => {
  const sentence = catalog.sentences[code]
  const form = typeof figures.form === 'string' ? sentence.forms?.[figures.form] : undefined
  const template = wordingFor(form ?? sentence, namedWheels(figures))
  let filled = ''
  for (const part of partsOf(template))
    filled += typeof part === 'string' ? part : slotValue(catalog, figures, part.name, part.isPressure)
  return filled.charAt(0).toUpperCase() + filled.slice(1)
}

type Slot = { readonly name: string; readonly isPressure: boolean }

const known = new Map<string, readonly (string | Slot)[]>()

/** A wording as words and slots; kept, since there are few wordings and each is filled over and over. */
const partsOf = (template: string): readonly (string | Slot)[] => {
  const found = known.get(template)
  if (found !== undefined) return found
  const made = template.split(/(\{\w+(?::p)?\})/).map((part): string | Slot => {
    const [, name, style] = /^\{(\w+)(?::(p))?\}$/.exec(part) ?? []
    return name === undefined ? part : { name, isPressure: style === 'p' }
  })
  known.set(template, made)
  return made
}

const wordingFor = ({ one, many, all }: Wordings, wheels: readonly WheelPosition[]): string => {
  if (wheels.length < 2) return one
  return (areAllFour(wheels) ? all : undefined) ?? many ?? one
}

const slotValue = (catalog: FindingCatalog, figures: Figures, name: string, pressure: boolean): string => {
  if (name === 'wheels' || name === 'wheel') return wheelWords(catalog, figures)
  const value = figures[name]
  if (typeof value === 'number') return pressure ? pressureText(value, figures.unit) : String(value)
  return Array.isArray(value) ? value.join(', ') : (value ?? '')
}

const wheelWords = (catalog: FindingCatalog, figures: Figures): string => {
  const named = namedWheels(figures)
  if (areAllFour(named)) return catalog.allFour
  const names = named.map((position) => catalog.wheels[position])
  const last = names.pop() ?? ''
  return names.length === 0 ? last : `${names.join(', ')} ${catalog.and} ${last}`
}

const namedWheels = ({ wheel, wheels }: Figures): WheelPosition[] =>
  readingOrder.filter((position) => (Array.isArray(wheels) ? wheels.includes(position) : position === wheel))

const areAllFour = (wheels: readonly WheelPosition[]): boolean =>
  wheels.length === 4 && !wheels.includes('SP')

/** As a gauge of that unit shows it: 22.0 psi, 152 kPa, 1.52 bar. */
const pressureText = (value: number, unit: Figures[string] | undefined): string =>
  value.toFixed(unit === 'kPa' ? 0 : unit === 'bar' ? 2 : 1)
