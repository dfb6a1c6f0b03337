/** Cuentas que se hacen antes de un día de corte. */
import type { daySums as en } from '../en/day-sums.ts';

export const daySums: typeof en = {
  head: 'Haga la cuenta antes de cortar (en inglés)',
  sums: [
    { topic: 'dust-control', name: 'Polvo: qué agua y qué mascarilla' },
    { topic: 'water-supply', name: 'Agua: cuánta llevar, y el lodo' },
    { topic: 'noise-dose', name: 'Ruido: cuántos minutos quedan' },
    { topic: 'hand-arm-vibration', name: 'Vibración: cuántos minutos quedan' },
    { topic: 'fume-room', name: 'Gases: por qué ningún motor funciona adentro' },
  ],
};
