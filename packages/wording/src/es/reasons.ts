import type { UnsafeDamage } from '@bayledger/reckoning/diagnosis/reason-codes'
import type { FastenerDamage } from '@bayledger/reckoning/evidence/evidence-schema'
import type { ReasonsWording } from '../reasons.ts'
import { observations } from './observations.ts'

export const reasons: ReasonsWording = {
  'no-gauge-value': () => 'no se anotó ningún valor del medidor',
  'not-seen-yet': () => 'todavía no vista por nosotros',
  'silent-not-asked-twice': () => 'sin respuesta, pero con menos de dos intentos',
  'plain-stem-not-asked-twice': () => 'una válvula sencilla, y sin dos intentos',
  'same-id-elsewhere': () => 'el mismo ID en otro lugar',
  'same-id-elsewhere-read-twice': () => 'el mismo ID en otro lugar, leído dos veces',
  'label-not-verified': () => 'sin datos verificados de la etiqueta para los dos ejes',
  'not-known': () => 'no se sabe',
  'no-tire-holds-that': () => 'ninguna llanta de este tipo puede tener eso',
  'temperature-out-of-range': () => 'fuera de -40 a 257 °F (-40 a 125 °C)',
  'read-before-change': () => 'se leyó antes de mover la rueda o de agregar aire',

  'at-or-under-share-of-label': ({ percent, label, unit }) =>
    `${percent} % de los ${label} ${unit} de la etiqueta, o menos`,
  'at-or-under-limit': ({ limit, unit }) => `${limit} ${unit} o menos`,
  'driven-low': () => 'se manejó con la llanta baja o vacía',
  'run-low-dust': () => 'polvo de hule de una llanta que rodó con poco aire',
  'sealant-seen': () => 'se vio sellador',
  'sealant-reported': () => 'se usó una lata de sellador',
  'hotter-than-others': ({ degrees, temperatureUnit }) =>
    `${degrees} °${temperatureUnit} más que el promedio de las demás`,
  'stem-cracked': () => 'la válvula está agrietada',
  'stem-leaks': () => 'la válvula pierde aire',
  'fasteners-damaged': ({ damage }) => damage.map((one) => fastenerDamage[one]).join(', '),
  'tire-damaged': ({ damage }) => damage.map((one) => tireDamage[one]).join(', '),
  'tread-worn-out': () => 'en las 2/32 in a las que una llanta se considera gastada, o menos',

  'damaged-inside': () => 'dañada por dentro',
  'beyond-repair-limits': () =>
    'pasa de los límites de una reparación: solo centro de la banda, 6 mm (1/4 in), sin encimarse, dibujo de más de 2/32 in, en buen estado por dentro',
  'puncture-seen': () => 'se vio una ponchadura',

  'at-or-under-warning-point': (values) => atWarningPoint(values),
  'cold-at-or-under-warning-point': (values) => `${coldWords(values)}, ${atWarningPoint(values)}`,
  'within-hold': (values) => withinHold(values),
  'sensor-within-hold': (values) => `el vehículo ve este valor, ${withinHold(values)}`,
  'no-light': () => 'y aun así no hay luz',
  'cold-under-label': (values) => coldWords(values),
  'under-label': ({ label, unit }) => `abajo de los ${label} ${unit} de la etiqueta`,
  'cold-above-sidewall-maximum': (values) =>
    `${coldWords(values)}, arriba del máximo del costado, ${values.sidewall} ${values.unit}`,
  'cold-at-sidewall-maximum': (values) =>
    `${coldWords(values)}, ajustada a los ${values.sidewall} ${values.unit} del costado`,
  'cold-under-mate': (values) =>
    `${coldWords(values)}, 3 psi o más abajo de la otra de su eje o de otras dos llantas`,
  'cold-as-other-axle': (values) => `${coldWords(values)}, como en el otro eje`,
  'lost-since-reading': ({ drop, days, perDay, unit }) =>
    `${drop} ${unit} perdidos en ${days} días, ${perDay} ${unit} por día, sin contar el clima`,
  'colder-air-explains': ({ percent }) => `el aire más frío desde entonces explica el ${percent} %`,
  'air-denser-here': ({ difference, unit }) => `el aire es más denso aquí por ${difference} ${unit}`,
  'overnight-at-or-under-warning-point': (values) =>
    `${values.predicted} ${values.unit} con la mínima de la noche, ${atWarningPoint(values)}`,

  'compares-with-earlier-wheels': () => 'desde entonces el sistema compara con ruedas que ya no tiene',
  'solid-with-right-tires': () => 'fija, aunque todas las llantas están bien',
  'fault-not-pressure': () => 'una falla, no la presión de una llanta',
  'none-fitted': () => 'no trae ninguno',
  'no-sensors-expected': () => 'no se esperan sensores',
  'answers-all-the-same': () => 'y aun así uno contesta',

  'silent-while-others-answered': ({ tries }) =>
    `sin respuesta en ${tries} intentos, mientras otros contestaron`,
  'vehicle-misses-it-too': ({ wheel }, { names }) => `al vehículo también le falta la ${names[wheel]}`,
  silent: ({ tries }) => `sin respuesta en ${tries} intentos`,
  'plain-stem': () => 'una válvula sencilla',
  'no-sensor-heard-here': () => 'el vehículo no oye ningún sensor de aquí',
  'battery-low': () => 'el sensor avisa que la batería está baja',
  'vehicle-listens-on': ({ megahertz }) => `el vehículo escucha en ${megahertz} MHz`,
  'refused-while-others-learned': () => 'rechazado, mientras se reconocieron otros',
  corroded: () => 'corroída',
  'near-end-of-battery-life': () => 'cerca del fin de los 5 a 10 años normales de una batería',
  'near-usual-battery-life': () => 'cerca de la vida normal de su batería',
  'off-by-another-amount': ({ offset, median, unit }) =>
    `${offset} ${unit} de diferencia con el medidor; en todas las ruedas la diferencia mediana es ${median} ${unit}`,
  'under-gauge': ({ offset, unit }) => `${offset} ${unit} abajo del medidor`,
  'no-air-at-that-temperature': () => 'el aire de una llanta nunca está tan caliente o tan frío',
  'did-not-follow': () => 'el valor quedó igual mientras la llanta cambiaba',
  'nothing-in-inflated-tire': () => 'nada, en una llanta inflada',

  'not-stored': () => 'no está entre los ID que tiene el vehículo',
  'stored-unheard': () => 'guardado, y no se oye en ninguna rueda',
  'stored-here-heard-elsewhere': () => 'guardado aquí, se oye en otra rueda',
  'unknown-here-known-elsewhere': () => 'este vehículo no lo conoce, y aquí está anotado en otro vehículo',
  'unknown-other-frequency-used-wheel': () =>
    'este vehículo no lo conoce, es de otra frecuencia, en una rueda usada',
  'on-another-vehicle': () => 'anotado en otro vehículo en este taller',
  'same-in-hexadecimal': ({ id }) => `en hexadecimal ${id}, como lo transmite la rueda`,

  'code-stored': ({ class: codeClass }) => `hay un código guardado: ${observations[codeClass]}`,
  'code-stored-as': ({ class: codeClass, text }) => `un código, ${observations[codeClass]}: ${text}`,
  'answers-despite-code': () => 'contesta ahora, aunque hay un código guardado de que no hay señal',
  'no-ids-stored': () => 'ningún ID guardado',
  'never-stops-flashing': () => 'nunca deja de parpadear',
  'dark-at-key-on': () => 'apagada al encender el auto, como llegó',
  'changed-just-now': () => 'acaba de cambiar',
  'not-driven-long-enough': () => 'no se ha manejado 20 minutos desde entonces, hasta donde se sabe',
  'solid-with-clear-tires': () => 'fija, aunque todas las llantas pasan de su punto de advertencia',
  'fault-with-matching-sensors': () => 'una falla, aunque todos los sensores contestan y coinciden',
  'corner-struck': () => 'el auto recibió un golpe junto a esta rueda',

  'our-recent-work': () => 'trabajamos en esta rueda en los últimos 90 días',
  'our-part-in-warranty': () => 'nuestra pieza, en garantía',
  'by-date-code': () => 'según su código de fecha',
  'in-32nds': () => 'en 32avos de pulgada',
  'light-off-all-checked': () => 'no encendida, y todas las revisiones están bien',

  'happens-there-only': () => 'pasa solo ahí',
  'added-to-vehicle': () => 'agregado al vehículo',
  fitted: () => 'puestas',
  'at-the-time': () => 'en ese momento',

  'as-written': ({ words }) => words,
}

type Values = Parameters<ReasonsWording['within-hold']>[0]
type Cold = Parameters<ReasonsWording['cold-under-label']>[0]

const atWarningPoint = ({ point, unit }: Pick<Values, 'point' | 'unit'>): string =>
  `en los ${point} ${unit} a los que se enciende la luz, o menos`

const withinHold = ({ hold, point, unit }: Values): string =>
  `no más de ${hold} ${unit} arriba de los ${point} ${unit} a los que se enciende la luz: si ya está encendida, sigue así`

const coldWords = ({ cold, label, unit }: Cold): string =>
  `en frío tiene ${cold} ${unit} y debe tener ${label} ${unit}`

const fastenerDamage: Readonly<Record<FastenerDamage, string>> = {
  'stud-missing': 'falta un birlo',
  'stud-broken': 'un birlo está roto',
  'fastener-missing': 'falta una tuerca o un perno',
  'thread-stripped': 'una rosca está barrida',
  'seat-wrong': 'una tuerca o un perno no ajusta en su asiento',
}

const tireDamage: Readonly<Record<UnsafeDamage, string>> = {
  bulge: 'una bola',
  'cord-showing': 'cuerdas a la vista',
  'cut-to-cord': 'un corte hasta las cuerdas',
}
