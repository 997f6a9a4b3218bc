import type { FindingSentences } from '../findings.ts'

/** What a customer reads of parts that grow old, and of what a warranty may still cover. */
export const ageSentences: Pick<
  FindingSentences,
  'under-warranty' | 'tire-old' | 'sensors-near-usual-life' | 'tread-low-soon'
> = {
  'under-warranty': {
    one: 'Una pieza que pusimos en la rueda {wheel} está en garantía; las piezas cubiertas no le cuestan nada.',
    many: 'Piezas que pusimos están en garantía: {wheels}. Las piezas cubiertas no le cuestan nada.',
  },
  'tire-old': {
    one: 'La llanta {wheel} tiene {years} años. Varios fabricantes de vehículos aconsejan cambiar las llantas desde los seis años.',
    many: 'Estas llantas tienen hasta {years} años: {wheels}. Varios fabricantes de vehículos aconsejan cambiarlas desde los seis.',
    all: 'Las cuatro llantas tienen hasta {years} años. Varios fabricantes de vehículos aconsejan cambiar las llantas desde los seis años.',
    forms: {
      'very-old': {
        one: 'La llanta {wheel} tiene {years} años. Muchos fabricantes de llantas aconsejan cambiarlas a los diez a más tardar.',
        many: 'Estas llantas tienen hasta {years} años: {wheels}. Muchos fabricantes de llantas aconsejan diez años como máximo.',
        all: 'Las cuatro llantas tienen hasta {years} años. Muchos fabricantes de llantas aconsejan cambiarlas a los diez a más tardar.',
      },
    },
  },
  'sensors-near-usual-life': {
    one: 'Todos los sensores funcionan. A los {years} años, sus baterías están cerca de su vida normal; téngalos en cuenta con las próximas llantas.',
  },
  'tread-low-soon': {
    one: 'A la llanta {wheel} le quedan {tread}/32 de pulgada de dibujo. Pronto habrá que cambiarla.',
    many: 'Pronto habrá que cambiar estas llantas: {wheels}. A la más gastada le quedan {tread}/32 de pulgada de dibujo.',
    all: 'Pronto habrá que cambiar las cuatro llantas. A la más gastada le quedan {tread}/32 de pulgada de dibujo.',
  },
}
