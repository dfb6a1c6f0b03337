/** What whoever writes begins with. */
import type { newGuide as guide, newShop as shop } from '../en/writing.ts';

export const newGuide: typeof guide = {
  summary: 'Una frase que diga para qué sirve esta página: escríbala antes de publicar.',
  sections: [
    ['Antes de empezar', '1. Qué debe estar apagado, frío o apartado.'],
    ['Paso a paso', '1. Un paso por línea, el verbo primero.'],
    ['Deténgase y tráigala cuando', '- Lo que ve, oye o huele.'],
  ],
};

export const newShop: typeof shop = {
  line: 'Motores pequeños, reparados',
  hours: 'De lunes a viernes, de 8 a 17',
};
