import type { ScreensWording } from '../screens.ts'

export const screens: ScreensWording = {
  failedToShow: {
    title: 'Esta página no se pudo mostrar.',
    detail:
      'Lo que se guardó antes se conserva. Cargue la página otra vez; si falla de nuevo, avise al dueño del taller.',
  },
  unreachable: {
    title: 'El servidor del taller no responde.',
    detail: 'Revise la red y luego intente otra vez.',
  },
  notOurs: (status) => ({
    title: 'La respuesta no vino del servidor del taller.',
    detail: `Algo entre aquí y el servidor respondió con el estado ${status}. Intente otra vez; si sigue igual, avise al dueño del taller.`,
  }),
  wheelOff: { ring: 'QUITADA', why: 'sin apretar' },
}
