import type { Figures } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { capitalized } from './capitalized.ts'
import type { FindingSentences, Sentence, Wordings } from './findings.ts'
import { type WheelsWording, wheelList } from './wheels.ts'

type Words = { readonly findingSentences: FindingSentences; readonly wheels: WheelsWording }

/** The customer's sentence for a finding, from the figures that the finding carries. */
export const customerSentence = (words: Words, code: FindingCode, figures: Figures): string => {
  const sentence: Sentence = words.findingSentences[code]
  const form = typeof figures.form === 'string' ? sentence.forms?.[figures.form] : undefined
  const template = wordingFor(form ?? sentence, namedWheels(figures))
  let filled = ''
  for (const part of partsOf(template))
    filled += typeof part === 'string' ? part : slotValue(words.wheels, figures, part.name, part.isPressure)
  return capitalized(filled)
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
  const areAllFour = wheels.length === 4 && !wheels.includes('SP')
  return (areAllFour ? all : undefined) ?? many ?? one
}

const slotValue = (wheels: WheelsWording, figures: Figures, name: string, isPressure: boolean): string => {
  if (name === 'wheels' || name === 'wheel') return wheelList(wheels, namedWheels(figures))
  const value = figures[name]
  if (typeof value === 'number') return isPressure ? pressureText(value, figures.unit) : String(value)
  return Array.isArray(value) ? value.join(', ') : (value ?? '')
}

const namedWheels = ({ wheel, wheels }: Figures): WheelPosition[] =>
  readingOrder.filter((position) => (Array.isArray(wheels) ? wheels.includes(position) : position === wheel))

/** As a gauge of that unit shows it: 22.0 psi, 152 kPa, 1.52 bar. */
const pressureText = (value: number, unit: Figures[string] | undefined): string =>
  value.toFixed(unit === 'kPa' ? 0 : unit === 'bar' ? 2 : 1)
